package org.frisket.ui.views.internal.typecase;

import java.util.Optional;

import org.eclipse.jface.util.LocalSelectionTransfer;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DragSource;
import org.eclipse.swt.dnd.DragSourceAdapter;
import org.eclipse.swt.dnd.DragSourceEvent;
import org.frisket.geometry.Point;
import org.frisket.typography.chart.GlyphChart;
import org.frisket.typography.chart.GlyphEntry;
import org.frisket.ui.bench.BenchDrop;
import org.frisket.ui.bench.JobOnBench;

/** Lets a glyph be dragged out of the grid. */
final class GlyphDrag extends DragSourceAdapter {

	/** What is dragged. */
	record Dragged(GlyphChart chart, GlyphEntry entry, Placer placer) implements BenchDrop {

		@Override
		public void dropped(JobOnBench bench, Point place) {
			placer.place(bench, chart, entry, Optional.of(place));
		}
	}

	private final GlyphGrid grid;
	private final Placer placer;
	private Dragged dragged;

	GlyphDrag(GlyphGrid grid, Placer placer) {
		this.grid = grid;
		this.placer = placer;
		DragSource source = new DragSource(grid, DND.DROP_COPY);
		source.setTransfer(LocalSelectionTransfer.getTransfer());
		source.addDragListener(this);
	}

	@Override
	public void dragStart(DragSourceEvent event) {
		dragged = grid.at(event.x, event.y).map(entry -> new Dragged(grid.chart(), entry, placer)).orElse(null);
		event.doit = dragged != null;
		if (event.doit) {
			LocalSelectionTransfer.getTransfer().setSelection(new StructuredSelection(dragged));
			LocalSelectionTransfer.getTransfer().setSelectionSetTime(event.time & 0xFFFFFFFFL);
		}
	}

	@Override
	public void dragSetData(DragSourceEvent event) {
		event.data = LocalSelectionTransfer.getTransfer().getSelection();
	}

	@Override
	public void dragFinished(DragSourceEvent event) {
		LocalSelectionTransfer.getTransfer().setSelection(null);
		dragged = null;
	}
}
