package org.frisket.typography.internal.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

class RunTest {

	private static List<Run> runs(String text) {
		return Run.of(text.toCharArray());
	}

	@Test
	void latinIsOneRun() {
		assertEquals(List.of(new Run(0, 12, false)), runs("Lane 12 & (b"));
	}

	@Test
	void emptyLineHasNoRuns() {
		assertEquals(List.of(), runs(""));
	}

	@Test
	void scriptsArePartedAndCommonCharactersStayBefore() {
		assertEquals(List.of(new Run(0, 4, false), new Run(4, 7, false)), runs("ab, \u0430\u0431\u0432"));
		assertEquals(List.of(new Run(0, 4, false)), runs("12 a"));
	}

	@Test
	void runsStandFromLeftToRight() {
		// a Hebrew word, then a Latin one, in a line that runs to the left
		assertEquals(List.of(new Run(3, 5, false), new Run(0, 3, true)), runs("\u05D0\u05D1 ab"));
		assertEquals(List.of(new Run(0, 3, false), new Run(3, 5, true)), runs("ab \u05D0\u05D1"));
	}
}
