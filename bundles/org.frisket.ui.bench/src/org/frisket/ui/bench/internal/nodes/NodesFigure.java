package org.frisket.ui.bench.internal.nodes;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.geometry.nodes.NodeAt;
import org.frisket.geometry.nodes.NodeKind;
import org.frisket.geometry.nodes.NodePath;
import org.frisket.geometry.nodes.NodeSelection;
import org.frisket.geometry.nodes.PathNode;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.canvas.CurvePath;
import org.frisket.ui.bench.internal.canvas.PixelSpace;
import org.frisket.ui.bench.internal.canvas.Units;
import org.frisket.ui.bench.internal.figures.ZoomedFigure;

/**
 * A path with its nodes, as large at every zoom: a square is a corner, a circle smooth, a diamond symmetric; selected
 * ones are filled and show their handles.
 */
public final class NodesFigure extends ZoomedFigure {

	/** From the middle of a mark to its edge. */
	private static final int NODE_PX = 4;
	private static final int HANDLE_PX = 3;
	private static final int RING_PX = 9;
	private static final int EDGE_PX = 12;

	private NodePath path = NodePath.EMPTY;
	private NodeSelection selection = NodeSelection.NONE;
	private PathNode held;
	private Point ring;

	private NodesFigure(CanvasZoom zoom) {
		super(zoom);
	}

	/** A new one over the elements of a viewer. */
	static NodesFigure over(EditPartViewer viewer, CanvasZoom zoom) {
		NodesFigure figure = new NodesFigure(zoom);
		LayerManager.Helper.find(viewer.getContents()).getLayer(LayerConstants.SCALED_FEEDBACK_LAYER).add(figure);
		return figure;
	}

	/** Takes it away again. */
	void remove() {
		if (getParent() != null) {
			getParent().remove(this);
		}
	}

	/**
	 * @param newPath in the job's frame
	 * @param newHeld a node that shows its handles besides the selected ones, be it on the path or not; null for none
	 * @param newRing a place to draw attention to; null for none
	 */
	void show(NodePath newPath, NodeSelection newSelection, PathNode newHeld, Point newRing) {
		path = newPath;
		selection = newSelection;
		held = newHeld;
		ring = newRing;
		zoomed();
		repaint();
	}

	@Override
	protected void zoomed() {
		Bounds bounds = path.outline().bounds();
		for (NodeAt at : path.nodes()) {
			PathNode node = path.node(at);
			bounds = bounds.with(node.place());
			bounds = selection.contains(at) ? withHandles(bounds, node) : bounds;
		}
		bounds = held == null ? bounds : withHandles(bounds, held);
		setBounds(Units.figure(bounds.grown(EDGE_PX / zoom.pixelsPerMm())));
	}

	private static Bounds withHandles(Bounds bounds, PathNode node) {
		Bounds more = node.in() == null ? bounds : bounds.with(node.in());
		return node.out() == null ? more : more.with(node.out());
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		PixelSpace.paint(graphics, zoom.zoom(), () -> {
			paintCurves(graphics);
			selection.nodes().stream().filter(path::has).forEach(at -> paintHandles(graphics, path.node(at)));
			if (held != null) {
				paintHandles(graphics, held);
			}
			path.nodes().forEach(at -> paintNode(graphics, path.node(at), selection.contains(at)));
			if (ring != null) {
				cased(graphics, 2, () -> graphics.drawOval(around(ring, RING_PX)));
			}
		});
	}

	/** Draws a shape thrice: a wide pale line that stands out from any stock, the ground, and the line itself. */
	private static void cased(Graphics graphics, int width, Runnable line, Runnable ground) {
		graphics.setForegroundColor(ThemeColour.BENCH_SHEET.colour());
		graphics.setLineWidth(width + 2);
		line.run();
		ground.run();
		graphics.setForegroundColor(ThemeColour.BENCH_SELECTION.colour());
		graphics.setLineWidth(width);
		line.run();
	}

	private static void cased(Graphics graphics, int width, Runnable line) {
		cased(graphics, width, line, () -> { });
	}

	private void paintCurves(Graphics graphics) {
		double scale = zoom.pixelsPerMm();
		Path curves = CurvePath.of(Display.getCurrent(), path.outline(), Transform.scaling(scale, scale));
		cased(graphics, 1, () -> graphics.drawPath(curves));
		curves.dispose();
	}

	private void paintHandles(Graphics graphics, PathNode node) {
		for (Point handle : new Point[] { node.in(), node.out() }) {
			if (handle != null && !handle.equals(node.place())) {
				org.eclipse.draw2d.geometry.Point from = around(node.place(), 0).getLocation();
				Rectangle dot = around(handle, HANDLE_PX);
				cased(graphics, 1, () -> graphics.drawLine(from, dot.getCenter()));
				graphics.setBackgroundColor(ThemeColour.BENCH_SELECTION.colour());
				cased(graphics, 1, () -> graphics.drawOval(dot), () -> graphics.fillOval(dot));
			}
		}
	}

	private void paintNode(Graphics graphics, PathNode node, boolean selected) {
		graphics.setBackgroundColor((selected ? ThemeColour.BENCH_SELECTION : ThemeColour.BENCH_SHEET).colour());
		Rectangle mark = around(node.place(), NODE_PX);
		graphics.setAntialias(node.kind() == NodeKind.CORNER ? SWT.OFF : SWT.ON);
		switch (node.kind()) {
		case CORNER -> cased(graphics, 1, () -> graphics.drawRectangle(mark), () -> graphics.fillRectangle(mark));
		case SMOOTH -> cased(graphics, 1, () -> graphics.drawOval(mark), () -> graphics.fillOval(mark));
		case SYMMETRIC -> {
			int[] corners = diamond(mark.expand(1, 1));
			cased(graphics, 1, () -> graphics.drawPolygon(corners), () -> graphics.fillPolygon(corners));
		}
		}
		graphics.setAntialias(SWT.ON);
	}

	private static int[] diamond(Rectangle box) {
		int middleX = box.x + box.width / 2;
		int middleY = box.y + box.height / 2;
		return new int[] { middleX, box.y, box.x + box.width, middleY, middleX, box.y + box.height, box.x, middleY };
	}

	private Rectangle around(Point mm, int reach) {
		int x = (int) Math.round(mm.x() * zoom.pixelsPerMm());
		int y = (int) Math.round(mm.y() * zoom.pixelsPerMm());
		return new Rectangle(x - reach, y - reach, 2 * reach, 2 * reach);
	}
}
