package org.frisket.material.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.frisket.model.OperationKind;
import org.junit.jupiter.api.Test;

class ToolOptionsTest {

	@Test
	void everyKindOfToolSurvivesItsTexts() {
		for (ToolKind kind : ToolKind.values()) {
			Tool usual = ToolOptions.usual(kind);
			assertEquals(kind, usual.kind());
			assertEquals(usual, ToolOptions.tool(kind, usual.id(), ToolOptions.texts(usual)));
			assertEquals(kind, ToolKind.of(kind.word()).orElseThrow());
		}
		Blade blade = new Blade("b1", "Number one", 60, 0.3125, new Edge(12.5, 80));
		assertEquals(blade, ToolOptions.tool(ToolKind.BLADE, "b1", ToolOptions.texts(blade)));
	}

	@Test
	void everyOperationButPrintingHasAUsualToolThatCanDoIt() {
		for (OperationKind operation : OperationKind.values()) {
			ToolKind.usual(operation).ifPresent(
					kind -> assertTrue(ToolOptions.usual(kind).operations().contains(operation), operation.getLiteral()));
			assertEquals(operation != OperationKind.PRINT, ToolKind.usual(operation).isPresent());
		}
	}

	@Test
	void allThatIsWrongIsSaidAtOnce() {
		List<Problem> problems = ToolOptions.problems(ToolKind.BLADE,
				Map.of("angle", "steep", "offset", "0.25", "sharpness", "9"));
		assertEquals(List.of("angle", "offset", "sharpness"), problems.stream().map(Problem::option).toList());
		assertTrue(problems.get(0).message().contains("steep"), problems.toString());
		assertTrue(problems.get(0).message().contains("15") && problems.get(0).message().contains("75 °"),
				problems.toString());
		assertTrue(problems.get(2).message().contains("dull-after"), problems.toString());
	}

	@Test
	void aColourHasToBeOne() {
		assertEquals(List.of("colour"),
				ToolOptions.problems(ToolKind.PEN, Map.of("colour", "teal")).stream().map(Problem::option).toList());
		assertThrows(IllegalArgumentException.class,
				() -> ToolOptions.tool(ToolKind.PEN, "p", Map.of("colour", "url(#x)")));
	}

	@Test
	void anAngleIsTakenWithAndWithoutItsUnit() {
		assertEquals(60, ((Blade) ToolOptions.tool(ToolKind.BLADE, "b", Map.of("angle", "60 °"))).angle());
		assertEquals(60.5, ((Blade) ToolOptions.tool(ToolKind.BLADE, "b", Map.of("angle", "60.5"))).angle());
	}

	@Test
	void anEdgeWearsByWhatItCuts() {
		Edge edge = new Edge(0, 100);
		assertEquals(Edge.State.SHARP, edge.state());
		Edge worn = edge.after(30, 2).after(20, 1);
		assertEquals(80, worn.wornMetres());
		assertEquals(Edge.State.NEARLY_DULL, worn.state());
		assertEquals(Edge.State.DULL, worn.after(20, 1).state());
		assertThrows(IllegalArgumentException.class, () -> edge.after(-1, 1));
		assertThrows(IllegalArgumentException.class, () -> new Edge(Double.NaN, 1));
	}
}
