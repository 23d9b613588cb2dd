package org.frisket.ui.bench.internal.snap;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.RectangleFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.snap.SnapHold;
import org.frisket.geometry.snap.SnapKind;
import org.frisket.geometry.snap.SnapLine;
import org.frisket.geometry.snap.SnapResult;
import org.frisket.ui.LengthText;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.figures.TagFigure;

/** A thin line along what holds a dragged thing, and a tag that says what it is and how far away. */
final class SnapHint {

	private static final int AWAY_PX = 4;
	private static final int NODE_PX = 9;
	private static final double NEAR_MM = 0.005;

	private final GraphicalViewer viewer;
	private final CanvasZoom zoom;
	private final List<IFigure> figures = new ArrayList<>();

	SnapHint(GraphicalViewer viewer, CanvasZoom zoom) {
		this.viewer = viewer;
		this.zoom = zoom;
	}

	void show(SnapResult held, Bounds box) {
		erase();
		held.node().ifPresent(node -> add(mark(px(node.x()), px(node.y()))));
		held.x().ifPresent(hold -> showVertical(hold, box, true));
		held.y().ifPresent(hold -> showHorizontal(hold, box, held.node().isEmpty()));
	}

	void erase() {
		figures.forEach(figure -> figure.getParent().remove(figure));
		figures.clear();
	}

	private void showVertical(SnapHold hold, Bounds box, boolean tagged) {
		Rectangle seen = seen();
		SnapLine line = hold.line();
		int from = (int) Math.max(seen.y, px(Math.min(line.from(), box.minY())));
		int to = (int) Math.min(seen.bottom(), px(Math.max(line.to(), box.maxY())));
		if (to > from) {
			add(line(new Rectangle(px(line.at()), from, 1, to - from)));
		}
		if (tagged) {
			tag(text(line, box.minY(), box.maxY()), px(line.at()) + AWAY_PX, from + AWAY_PX);
		}
	}

	private void showHorizontal(SnapHold hold, Bounds box, boolean tagged) {
		Rectangle seen = seen();
		SnapLine line = hold.line();
		int from = (int) Math.max(seen.x, px(Math.min(line.from(), box.minX())));
		int to = (int) Math.min(seen.right(), px(Math.max(line.to(), box.maxX())));
		if (to > from) {
			add(line(new Rectangle(from, px(line.at()), to - from, 1)));
		}
		if (tagged) {
			tag(text(line, box.minX(), box.maxX()), from + AWAY_PX, px(line.at()) + AWAY_PX);
		}
	}

	/** What holds, and how far it is from what is moved. */
	private static String text(SnapLine line, double from, double to) {
		double gap = Math.max(line.from() - to, from - line.to());
		boolean isThing = line.kind() == SnapKind.EDGE || line.kind() == SnapKind.CENTRE;
		return isThing && gap > NEAR_MM ? NLS.bind(Messages.SnapHint_distance, word(line.kind()), LengthText.of(gap))
				: word(line.kind());
	}

	private static String word(SnapKind kind) {
		return switch (kind) {
		case GUIDE -> Messages.SnapHint_guide;
		case NODE -> Messages.SnapHint_node;
		case EDGE -> Messages.SnapHint_edge;
		case CENTRE -> Messages.SnapHint_centre;
		case GRID -> Messages.SnapHint_grid;
		};
	}

	private void tag(String text, int x, int y) {
		TagFigure tag = new TagFigure();
		tag.setText(text);
		add(tag);
		tag.showAt(new org.eclipse.draw2d.geometry.Point(x, y), seen());
	}

	private static IFigure line(Rectangle bounds) {
		RectangleFigure line = new RectangleFigure();
		line.setOutline(false);
		line.setBackgroundColor(ThemeColour.BENCH_SELECTION.colour());
		line.setBounds(bounds);
		return line;
	}

	private static IFigure mark(int x, int y) {
		RectangleFigure mark = new RectangleFigure();
		mark.setFill(false);
		mark.setForegroundColor(ThemeColour.BENCH_SELECTION.colour());
		mark.setBounds(new Rectangle(x - NODE_PX / 2, y - NODE_PX / 2, NODE_PX, NODE_PX));
		return mark;
	}

	private void add(IFigure figure) {
		LayerManager.Helper.find(viewer.getRootEditPart()).getLayer(LayerConstants.FEEDBACK_LAYER).add(figure);
		figures.add(figure);
	}

	private Rectangle seen() {
		return ((FigureCanvas) viewer.getControl()).getViewport().getClientArea().getCopy();
	}

	/** In pixels of the layer; endless lines end far outside. */
	private int px(double mm) {
		return (int) Math.round(Math.max(-1e8, Math.min(1e8, mm * zoom.pixelsPerMm())));
	}
}
