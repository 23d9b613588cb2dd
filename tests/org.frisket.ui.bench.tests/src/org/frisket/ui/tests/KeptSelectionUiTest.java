package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;

import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.layers.RestackElements;
import org.frisket.model.Jobs;
import org.frisket.ui.bench.internal.parts.Selection;
import org.junit.jupiter.api.Test;

/** What stays selected while the job changes under it. */
class KeptSelectionUiTest extends OpenBench {

	@Test
	void elementsTakenToAnotherLayerAndBackStaySelectedInTheirOrder() throws IOException {
		String before = text(bench.document().job());
		List<String> order = List.of(sample.disc.getId(), sample.plate.getId());
		bench.viewer().setSelection(new org.eclipse.jface.viewers.StructuredSelection(
				order.stream().flatMap(id -> Selection.all(bench.viewer()).stream()
						.filter(part -> part.element().getId().equals(id))).toList()));
		edits().execute(RestackElements.onto(List.of(element(sample.disc)),
				Jobs.layerOf(element(sample.plate))));
		assertEquals(order, selectedIds());
		Screen.key("ctrl+z");
		assertEquals(before, text(bench.document().job()));
		assertEquals(order, selectedIds());
		Screen.key("ctrl+shift+z");
		assertEquals(order, selectedIds());
	}

	@Test
	void whatIsDeletedIsSelectedNoMoreAndTheRestIs() {
		Selection.select(bench.viewer(), List.of(element(sample.plate), element(sample.disc)));
		edits().execute(new DeleteElements(List.of(element(sample.disc))));
		assertEquals(List.of(sample.plate.getId()), selectedIds());
		Screen.key("ctrl+z");
		assertEquals(List.of(sample.plate.getId()), selectedIds());
	}
}
