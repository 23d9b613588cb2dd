package org.frisket.export.tests.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;

import org.frisket.export.machine.ToolNumbers;
import org.frisket.export.tests.Runs;
import org.frisket.run.MachineRun;
import org.frisket.toolpath.Stage;
import org.junit.jupiter.api.Test;

class ToolNumbersTest {

	private static final MachineRun RUN = Runs.onDesk(false).leg(Stage.DRAW, Runs.pen(), 0, 50, "M0 0H10")
			.leg(Stage.PERFORATE, Runs.blade(), 0, 50, "M0 0H10").leg(Stage.CUT, Runs.blade(), 0, 50, "M0 0H10").run();

	private static List<Integer> numbers(String given) throws IOException {
		ToolNumbers numbers = new ToolNumbers(RUN, given);
		return IntStream.range(0, 3).mapToObj(numbers::of).toList();
	}

	@Test
	void toolsAreNumberedInTheirOrder() throws IOException {
		assertEquals(List.of(1, 2, 2), numbers(""));
	}

	@Test
	void whatTheStudioSaysComesFirst() throws IOException {
		assertEquals(List.of(3, 1, 1), numbers("draw=3"));
		assertEquals(List.of(2, 3, 1), numbers("cut=1, draw = 2"));
		assertEquals(List.of(4, 5, 6), numbers("draw=4 perforate=5;cut=6"));
		assertEquals(List.of(2, 3, 1), numbers("cut=1"));
	}

	@Test
	void whatCannotBeReadIsRefused() {
		for (String wrong : List.of("cut", "cut=0", "cut=1000", "slice=1", "print=1", "cut=1,,draw=2", "cut=1.5")) {
			IOException refusal = assertThrows(IOException.class, () -> numbers(wrong));
			assertTrue(refusal.getMessage().contains("kiss-cut"), refusal.getMessage());
		}
	}
}
