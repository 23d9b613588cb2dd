package org.frisket.ui.bench.internal.bridges;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.prepare.wording.BridgeEdits;
import org.frisket.prepare.wording.Bridgework;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.canvas.CurvePath;
import org.frisket.ui.bench.internal.canvas.PixelSpace;
import org.frisket.ui.bench.internal.canvas.Units;
import org.frisket.ui.bench.internal.figures.ZoomedFigure;

/**
 * The bridges of a wording: a line across each with a handle at its middle, square between letters and round at
 * islands; islands that fall out are drawn with dashes.
 */
final class BridgesFigure extends ZoomedFigure {

	/** From the middle of a handle to where it is still taken hold of. */
	static final int REACH_PX = 9;
	private static final int HANDLE_PX = 5;
	private static final int EDGE_PX = 14;

	private Bridgework work = Bridgework.NOTHING;
	private Transform toJob = Transform.IDENTITY;
	private BridgeEdits.Held chosen;
	private BridgeEdits.Held dragged;
	private Point goal;

	private BridgesFigure(CanvasZoom zoom) {
		super(zoom);
	}

	/** A new one over the elements of a viewer. */
	static BridgesFigure over(EditPartViewer viewer, CanvasZoom zoom) {
		BridgesFigure figure = new BridgesFigure(zoom);
		LayerManager.Helper.find(viewer.getContents()).getLayer(LayerConstants.SCALED_FEEDBACK_LAYER).add(figure);
		return figure;
	}

	void remove() {
		if (getParent() != null) {
			getParent().remove(this);
		}
	}

	/**
	 * @param newWork    in a frame of its own
	 * @param newToJob   from there
	 * @param newChosen  null for none
	 * @param newDragged one that is on its way; null for none
	 * @param newGoal    where to, in the own frame
	 */
	void show(Bridgework newWork, Transform newToJob, BridgeEdits.Held newChosen, BridgeEdits.Held newDragged,
			Point newGoal) {
		work = newWork;
		toJob = newToJob;
		chosen = newChosen;
		dragged = newDragged;
		goal = newGoal;
		zoomed();
		repaint();
	}

	@Override
	protected void zoomed() {
		Bounds bounds = Bounds.EMPTY;
		for (BridgeEdits.Held held : BridgeEdits.all(work)) {
			bounds = bounds.with(toJob.apply(held.place()));
		}
		for (Bridgework.LetterAt letter : work.letters()) {
			bounds = bounds.with(letter.outline().transformed(toJob).bounds());
		}
		bounds = goal == null ? bounds : bounds.with(toJob.apply(goal));
		setBounds(Units.figure(bounds.isEmpty() ? bounds : bounds.grown(EDGE_PX / zoom.pixelsPerMm())));
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		PixelSpace.paint(graphics, zoom.zoom(), () -> {
			work.islands().stream().filter(Bridgework.IslandAt::loose).forEach(island -> paintLoose(graphics, island));
			BridgeEdits.all(work).forEach(held -> paintBridge(graphics, held));
			if (goal != null) {
				paintGoal(graphics);
			}
		});
	}

	private void paintLoose(Graphics graphics, Bridgework.IslandAt island) {
		double scale = zoom.pixelsPerMm();
		Path edge = CurvePath.of(Display.getCurrent(), Outline.of(island.edge()),
				toJob.then(Transform.scaling(scale, scale)));
		graphics.setForegroundColor(ThemeColour.BENCH_SELECTION.colour());
		graphics.setLineWidth(2);
		graphics.setLineStyle(SWT.LINE_DASH);
		graphics.drawPath(edge);
		graphics.setLineStyle(SWT.LINE_SOLID);
		edge.dispose();
	}

	private void paintBridge(Graphics graphics, BridgeEdits.Held held) {
		boolean round = held instanceof BridgeEdits.Held.OfIsland;
		if (held instanceof BridgeEdits.Held.OfIsland of) {
			Bridgework.Stub stub = of.island().bridges().get(of.number());
			line(graphics, stub.inner(), stub.outer());
		} else if (held instanceof BridgeEdits.Held.Between between) {
			line(graphics, between.span().from(), between.span().to());
		}
		handle(graphics, held.place(), round, held.equals(chosen));
	}

	private void paintGoal(Graphics graphics) {
		Point from = dragged instanceof BridgeEdits.Held.OfIsland of ? of.island().middle() : dragged.place();
		graphics.setLineStyle(SWT.LINE_DASH);
		line(graphics, from, goal);
		graphics.setLineStyle(SWT.LINE_SOLID);
		handle(graphics, goal, dragged instanceof BridgeEdits.Held.OfIsland, true);
	}

	/** Pale first, so that it stands out from any stock. */
	private void line(Graphics graphics, Point from, Point to) {
		org.eclipse.draw2d.geometry.Point a = pixel(from);
		org.eclipse.draw2d.geometry.Point b = pixel(to);
		graphics.setForegroundColor(ThemeColour.BENCH_SHEET.colour());
		graphics.setLineWidth(4);
		graphics.drawLine(a, b);
		graphics.setForegroundColor(ThemeColour.BENCH_SELECTION.colour());
		graphics.setLineWidth(2);
		graphics.drawLine(a, b);
	}

	private void handle(Graphics graphics, Point place, boolean round, boolean filled) {
		Rectangle box = new Rectangle(pixel(place), new org.eclipse.draw2d.geometry.Dimension())
				.expand(HANDLE_PX, HANDLE_PX);
		graphics.setBackgroundColor((filled ? ThemeColour.BENCH_SELECTION : ThemeColour.BENCH_SHEET).colour());
		graphics.setForegroundColor(ThemeColour.BENCH_SHEET.colour());
		graphics.setLineWidth(5);
		edge(graphics, box, round);
		if (round) {
			graphics.fillOval(box);
		} else {
			graphics.fillRectangle(box);
		}
		graphics.setForegroundColor(ThemeColour.BENCH_SELECTION.colour());
		graphics.setLineWidth(2);
		edge(graphics, box, round);
	}

	private static void edge(Graphics graphics, Rectangle box, boolean round) {
		if (round) {
			graphics.drawOval(box);
		} else {
			graphics.drawRectangle(box);
		}
	}

	private org.eclipse.draw2d.geometry.Point pixel(Point own) {
		Point mm = toJob.apply(own);
		return new org.eclipse.draw2d.geometry.Point((int) Math.round(mm.x() * zoom.pixelsPerMm()),
				(int) Math.round(mm.y() * zoom.pixelsPerMm()));
	}
}
