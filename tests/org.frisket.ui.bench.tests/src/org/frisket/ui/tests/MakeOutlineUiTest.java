package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.PathData;
import org.frisket.model.Element;
import org.frisket.model.Mat;
import org.frisket.model.Outline;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.Selection;
import org.junit.jupiter.api.Test;

/** A wording becomes an outline by its key, looks the same, and its mat follows. */
class MakeOutlineUiTest extends OpenBench {

	private final WordingJob wordings = new WordingJob();

	private Bounds bounds(String id) {
		return Selection.all(bench.viewer()).stream().filter(part -> part.element().getId().equals(id))
				.map(ElementPart::boundsInMm).findFirst().orElseThrow();
	}

	@Test
	void wordingBecomesAnOutlineOfTheSameShape() throws Exception {
		page().closeAllEditors(false);
		Path file = wordings.save(folder.resolve("wording.frjob"));
		bench = open(file);
		Screen.waitUntil("the wordings are worked through", bench::isUpToDate);
		listen(bench);
		String first = text(bench.document().job());
		String id = wordings.first.getId();
		Bounds before = bounds(id);
		Selection.select(bench.viewer(), List.of(element(wordings.first)));
		Screen.key("ctrl+b");
		Screen.key("9");
		Element made = element(wordings.first);
		assertTrue(made instanceof Outline);
		assertEquals("Make outline of wording", bench.commandStack().getUndoCommand().getLabel());
		assertEquals(List.of(made), ((Mat) element(wordings.mat)).getBehind());
		assertEquals(List.of(id), selectedIds());
		assertTrue(PathData.parse(((Outline) made).getPathData()).nodeCount() > 50);
		Screen.waitUntil("the outline is worked through", bench::isUpToDate);
		Bounds after = bounds(id);
		assertEquals(before.minX(), after.minX(), 0.03);
		assertEquals(before.maxX(), after.maxX(), 0.03);
		assertEquals(before.minY(), after.minY(), 0.03);
		assertEquals(before.maxY(), after.maxY(), 0.03);
		Screen.key("F2");
		assertTrue(bench.nodes().isActive());
		Screen.keep(Screen.picture(canvas()), "outline-of-wording");
		Screen.key("Escape");
		Screen.key("ctrl+z");
		assertEquals(first, text(bench.document().job()));
	}
}
