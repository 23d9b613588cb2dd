package org.frisket.ui.bench.internal.looks;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.widgets.Display;
import org.frisket.model.OperationKind;
import org.frisket.ui.OperationName;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.editor.BenchDocument;
import org.frisket.ui.bench.internal.figures.OperationStroke;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.Selection;

/** What the lines of a look mean, in the lower left corner of what is seen, and the labels of the operations. */
final class Legend {

	private static final int SPACE_PX = 8;
	private static final int SAMPLE_PX = 40;
	private static final int EDGE_PX = 12;

	/**
	 * A line of the legend.
	 *
	 * @param sample painted onto a path; null where there is none
	 * @param hatch  whether that path is a hatched area rather than a line
	 */
	private record Row(BiConsumer<Ink, Path> sample, boolean hatch, String text) {

		Row(BiConsumer<Ink, Path> sample, String text) {
			this(sample, false, text);
		}
	}

	private final Looks looks;
	private final GraphicalViewer viewer;
	private final BenchDocument document;

	Legend(Looks looks, GraphicalViewer viewer, BenchDocument document) {
		this.looks = looks;
		this.viewer = viewer;
		this.document = document;
	}

	void paint(Graphics graphics, IFigure layer) {
		List<ElementPart> parts = Selection.all(viewer);
		if (looks.look() == BenchLook.PREVIEW || parts.isEmpty()) {
			return;
		}
		graphics.setAntialias(SWT.ON);
		if (looks.look() == BenchLook.OPERATIONS) {
			new OperationLabels(parts, layer.getFont()).paint(graphics);
		}
		paint(graphics, layer, rows(parts));
	}

	private List<Row> rows(List<ElementPart> parts) {
		return switch (looks.look()) {
		case PREVIEW -> List.of();
		case OUTLINE -> outlineRows(parts);
		case OPERATIONS -> operationRows(parts);
		case BEFORE -> cleaningRows(parts);
		};
	}

	private static List<Row> outlineRows(List<ElementPart> parts) {
		List<Row> rows = new ArrayList<>();
		rows.add(new Row((ink, path) -> ink.line(path, ThemeColour.BENCH_INK.colour(), BenchLook.THIN, Ink.OPAQUE),
				Messages.Legend_closed));
		if (parts.stream().anyMatch(part -> part.picture().curves().contours().stream().anyMatch(c -> !c.isClosed()))) {
			rows.add(new Row((ink, path) -> ink.line(path, ThemeColour.BENCH_INK.colour(), BenchLook.THIN, Ink.OPAQUE,
					BenchLook.OPEN_DASH), Messages.Legend_open));
		}
		return rows;
	}

	private static List<Row> operationRows(List<ElementPart> parts) {
		Set<OperationKind> present = EnumSet.noneOf(OperationKind.class);
		parts.stream().filter(part -> !part.picture().curves().isEmpty())
				.forEach(part -> present.addAll(part.picture().strokes()));
		List<Row> rows = new ArrayList<>();
		for (OperationKind kind : present) {
			rows.add(new Row(OperationStroke.of(kind)::paint, kind == OperationKind.PRINT, OperationName.of(kind)));
		}
		return rows;
	}

	private List<Row> cleaningRows(List<ElementPart> parts) {
		List<Row> rows = new ArrayList<>();
		rows.add(new Row((ink, path) -> ink.line(path, ThemeColour.BENCH_INK.colour(), BenchLook.THIN, Ink.OPAQUE),
				Messages.Legend_source));
		rows.add(new Row((ink, path) -> ink.line(path, ThemeColour.BENCH_REMOVED.colour(), BenchLook.REMOVED_WIDTH,
				Ink.OPAQUE), Messages.Legend_removed));
		if (!looks.isBeforeKnown() || document.picture().prepared() == null) {
			rows.add(new Row(null, Messages.Legend_looking));
			return rows;
		}
		CleaningCounts counts = parts.stream().map(part -> looks.before().get(part.element().getId()))
				.filter(found -> found != null).map(CleaningPicture::counts)
				.reduce(CleaningCounts.NONE, CleaningCounts::plus);
		counts.lines().forEach(line -> rows.add(new Row(null, line)));
		return rows;
	}

	private void paint(Graphics graphics, IFigure layer, List<Row> rows) {
		Font font = layer.getFont();
		int line = FigureUtilities.getTextExtents(looks.look().title(), font).height + SPACE_PX / 2;
		int width = FigureUtilities.getTextWidth(looks.look().title(), font);
		for (Row row : rows) {
			width = Math.max(width, indent(row) + FigureUtilities.getTextWidth(row.text(), font));
		}
		Rectangle seen = seen(layer);
		Rectangle box = new Rectangle(seen.x + EDGE_PX,
				seen.bottom() - EDGE_PX - line * (rows.size() + 1) - 2 * SPACE_PX, width + 2 * SPACE_PX,
				line * (rows.size() + 1) + 2 * SPACE_PX);
		graphics.setBackgroundColor(ThemeColour.BENCH_SHEET.colour());
		graphics.fillRectangle(box);
		graphics.setForegroundColor(ThemeColour.BENCH_SHEET_EDGE.colour());
		graphics.setLineWidth(1);
		graphics.drawRectangle(box.x, box.y, box.width - 1, box.height - 1);
		graphics.setForegroundColor(ThemeColour.BENCH_HINT.colour());
		graphics.drawText(looks.look().title(), box.x + SPACE_PX, box.y + SPACE_PX);
		int y = box.y + SPACE_PX + line;
		for (Row row : rows) {
			paint(graphics, row, box.x + SPACE_PX, y, line - SPACE_PX / 2);
			y += line;
		}
	}

	private static int indent(Row row) {
		return row.sample() == null ? 0 : SAMPLE_PX + SPACE_PX;
	}

	private static void paint(Graphics graphics, Row row, int x, int y, int height) {
		if (row.sample() != null) {
			Path path = row.hatch() ? hatch(x, y, height) : line(x, y + height / 2);
			row.sample().accept(new GraphicsInk(graphics), path);
			path.dispose();
		}
		graphics.setForegroundColor(ThemeColour.BENCH_INK.colour());
		graphics.drawText(row.text(), x + indent(row), y);
	}

	private static Path line(int x, int y) {
		Path path = new Path(Display.getCurrent());
		path.moveTo(x, y);
		path.lineTo(x + SAMPLE_PX, y);
		return path;
	}

	private static Path hatch(int x, int y, int height) {
		Path path = new Path(Display.getCurrent());
		int slant = height - SPACE_PX;
		for (int left = x; left + slant <= x + SAMPLE_PX; left += SPACE_PX / 2 + 1) {
			path.moveTo(left, y + SPACE_PX / 2 + slant);
			path.lineTo(left + slant, y + SPACE_PX / 2);
		}
		return path;
	}

	private static Rectangle seen(IFigure layer) {
		IFigure each = layer;
		while (!(each instanceof Viewport)) {
			each = each.getParent();
		}
		Viewport viewport = (Viewport) each;
		return new Rectangle(viewport.getViewLocation(), viewport.getClientArea().getSize());
	}
}
