package org.frisket.toolpath.internal.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

class ToolOrderTest {

	/** The last of the first stage has to be the first of the second, so that its last can be that of the third. */
	@Test
	void looksAhead() {
		List<ToolOrder.Ends> ends = ToolOrder.of(List.of(List.of("a", "b", "c"), List.of("a", "b"), List.of("b")));
		assertEquals("a", ends.get(0).last());
		assertEquals(new ToolOrder.Ends("a", "b"), ends.get(1));
		assertEquals(new ToolOrder.Ends("b", "b"), ends.get(2));
	}

	/** Against all ways to choose them. */
	@Test
	void asFewAsCanBe() {
		SplittableRandom random = new SplittableRandom(6);
		for (int run = 0; run < 300; run++) {
			List<List<String>> stages = new ArrayList<>();
			for (int i = 0; i < 1 + random.nextInt(5); i++) {
				List<String> tools = new ArrayList<>(List.of("a", "b", "c", "d"));
				while (tools.size() > 1 && random.nextInt(3) > 0) {
					tools.remove(random.nextInt(tools.size()));
				}
				stages.add(tools);
			}
			List<ToolOrder.Ends> ends = ToolOrder.of(stages);
			int changes = 0;
			for (int i = 0; i < stages.size(); i++) {
				assertTrue(stages.get(i).contains(ends.get(i).first()) && stages.get(i).contains(ends.get(i).last()));
				if (stages.get(i).size() > 1) {
					assertNotEquals(ends.get(i).first(), ends.get(i).last());
				}
				changes += i > 0 && !ends.get(i - 1).last().equals(ends.get(i).first()) ? 1 : 0;
			}
			assertEquals(fewest(stages, 0, null), changes, "run " + run);
		}
	}

	private static int fewest(List<List<String>> stages, int at, String before) {
		if (at == stages.size()) {
			return 0;
		}
		int fewest = Integer.MAX_VALUE;
		List<String> tools = stages.get(at);
		for (String first : tools) {
			for (String last : tools) {
				if (tools.size() == 1 || !first.equals(last)) {
					fewest = Math.min(fewest,
							(before != null && !before.equals(first) ? 1 : 0) + fewest(stages, at + 1, last));
				}
			}
		}
		return fewest;
	}
}
