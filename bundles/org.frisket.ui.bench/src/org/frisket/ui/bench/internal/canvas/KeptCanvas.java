package org.frisket.ui.bench.internal.canvas;

import java.util.List;

import org.eclipse.draw2d.LightweightSystem;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Listener;

/**
 * Keeps a picture of what is seen on the canvas. Where figures change, pieces of the picture are painted anew; the window
 * is given the picture, whatever part of it it asks for. GTK paints some time after it was asked to, all at once, and
 * tells no more than the box around: there is no knowing which of it has to be painted, so without the picture a line
 * across the bench would have everything painted.
 */
public final class KeptCanvas extends LightweightSystem {

	/** Where the window system paints at once, or shows pictures coarser than it paints, figures are painted as ever. */
	private static final boolean IS_GTK = "gtk".equals(SWT.getPlatform()); //$NON-NLS-1$
	private static final int WHOLE_PIXELS = 100;

	private Canvas canvas;
	private Image picture;
	/** Where pieces are painted before they come into the picture. */
	private Image draft;
	/** What of the picture is no longer true. */
	private final Pieces stale = new Pieces();

	public KeptCanvas() {
		setUpdateManager(new PieceUpdates(this));
	}

	@Override
	public void setControl(Canvas control) {
		super.setControl(control);
		if (control != null) {
			canvas = control;
			Listener settings = event -> forget();
			canvas.getDisplay().addListener(SWT.Settings, settings);
			canvas.addListener(SWT.Dispose, event -> {
				event.display.removeListener(SWT.Settings, settings);
				forget();
			});
		}
	}

	boolean isKept() {
		return IS_GTK && canvas != null && canvas.getMonitor().getZoom() == WHOLE_PIXELS;
	}

	/** Has pieces of the canvas painted anew. */
	void redraw(List<Rectangle> pieces) {
		for (Rectangle piece : pieces) {
			stale.add(piece);
			canvas.redraw(piece.x, piece.y, piece.width, piece.height, false);
		}
		canvas.update();
	}

	/** Has all of the canvas painted anew when it is seen next. */
	public void forget() {
		if (picture != null) {
			picture.dispose();
			draft.dispose();
			picture = null;
		}
	}

	@Override
	public void paint(GC gc) {
		Rectangle area = new Rectangle(canvas.getClientArea());
		if (!isKept() || area.isEmpty()) {
			forget();
			super.paint(gc);
			return;
		}
		if (picture == null || !area.equals(new Rectangle(picture.getBounds()))) {
			forget();
			picture = new Image(canvas.getDisplay(), area.width, area.height);
			draft = new Image(canvas.getDisplay(), area.width, area.height);
			// what was stale may lie outside a canvas that has become smaller
			stale.take();
			stale.add(area);
		}
		List<Rectangle> pieces = stale.take();
		try {
			pieces.stream().map(piece -> piece.getIntersection(area)).filter(piece -> !piece.isEmpty())
					.forEach(this::paintPiece);
		} catch (RuntimeException e) {
			forget();
			throw e;
		}
		Rectangle asked = new Rectangle(gc.getClipping()).intersect(area);
		if (!asked.isEmpty()) {
			copy(picture, asked, gc);
		}
	}

	/**
	 * A scaled figure's clip is rounded outwards, so that it paints over the edge of a piece. What is seen through would be
	 * painted twice there.
	 */
	private void paintPiece(Rectangle piece) {
		GC gc = new GC(draft, canvas.getStyle() & (SWT.LEFT_TO_RIGHT | SWT.RIGHT_TO_LEFT));
		try {
			gc.setFont(canvas.getFont());
			gc.setForeground(canvas.getForeground());
			gc.setBackground(canvas.getBackground());
			gc.setClipping(piece.x, piece.y, piece.width, piece.height);
			super.paint(gc);
		} finally {
			gc.dispose();
		}
		GC whole = new GC(picture);
		try {
			copy(draft, piece, whole);
		} finally {
			whole.dispose();
		}
	}

	private static void copy(Image from, Rectangle piece, GC to) {
		to.drawImage(from, piece.x, piece.y, piece.width, piece.height, piece.x, piece.y, piece.width, piece.height);
	}
}
