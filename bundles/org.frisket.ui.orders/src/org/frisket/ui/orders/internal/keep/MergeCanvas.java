package org.frisket.ui.orders.internal.keep;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.frisket.orders.compare.Row;
import org.frisket.orders.paper.ComparedJobs;
import org.frisket.ui.orders.internal.Named;
import org.frisket.ui.orders.internal.Pictures;

/**
 * One side of a job that two desks have changed, on white in any theme. What was changed is framed: with a whole line,
 * with dashes where both have changed it, with dots where it lies on the other side only.
 */
public final class MergeCanvas extends Canvas {

	static final int MARGIN_PX = 8;
	/** Below the picture, for the bar. */
	static final int BAR_PX = 8;
	private static final int AROUND_PX = 3;
	private static final int CHOSEN = 48;
	private static final int OPAQUE = 255;

	private final String name;
	private final List<Row> rows;
	private Image image;
	private int density = 1;
	private int bar;
	private List<ComparedJobs.Place> places = List.of();
	private String selected;

	MergeCanvas(Composite parent, String name, List<Row> rows, Consumer<Row> chosen) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS | SWT.BORDER);
		this.name = name;
		this.rows = rows;
		addListener(SWT.Paint, event -> paint(event.gc));
		addListener(SWT.MouseDown, event -> at(event).ifPresent(chosen));
		addListener(SWT.Dispose, event -> forget());
		Named.as(this::spoken, this);
	}

	/** What is framed, in words. */
	public String spoken() {
		String framed = places.stream().filter(ComparedJobs.Place::there).flatMap(place -> row(place).stream())
				.map(Row::subject).collect(Collectors.joining(", ")); //$NON-NLS-1$
		return framed.isEmpty() ? name : NLS.bind(Messages.MergeCanvas_spoken, name, framed);
	}

	/**
	 * @param length of the bar by which lengths can be read off, in pixels of the screen
	 * @param pixels of the picture to one of the screen
	 */
	void show(ComparedJobs.Side side, int length, int pixels) {
		forget();
		image = new Image(getDisplay(), Pictures.data(side.image()));
		density = pixels;
		bar = length;
		places = side.places();
		redraw();
	}

	/** @param element its id; null for none */
	void select(String element) {
		selected = element;
		redraw();
	}

	/** Where what was changed is framed, in pixels of the control. */
	public Optional<Rectangle> boundsOf(String element) {
		return places.stream().filter(place -> place.element().equals(element)).map(MergeCanvas::box).findFirst();
	}

	private void forget() {
		if (image != null) {
			image.dispose();
			image = null;
		}
	}

	private Optional<Row> row(ComparedJobs.Place place) {
		return rows.stream().filter(row -> row.element().equals(Optional.of(place.element()))).findFirst();
	}

	private static Rectangle box(ComparedJobs.Place place) {
		int left = (int) Math.floor(place.x()) - AROUND_PX + MARGIN_PX;
		int top = (int) Math.floor(place.y()) - AROUND_PX + MARGIN_PX;
		return new Rectangle(left, top, (int) Math.ceil(place.width()) + 2 * AROUND_PX,
				(int) Math.ceil(place.height()) + 2 * AROUND_PX);
	}

	/** The smallest: it may lie in a larger one. */
	private Optional<Row> at(Event event) {
		return places.stream().filter(place -> box(place).contains(event.x, event.y))
				.min((a, b) -> Double.compare(a.width() * a.height(), b.width() * b.height())).flatMap(this::row);
	}

	private void paint(GC gc) {
		gc.setBackground(getDisplay().getSystemColor(SWT.COLOR_WHITE));
		gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_BLACK));
		gc.fillRectangle(getClientArea());
		if (image == null) {
			return;
		}
		Rectangle pixels = image.getBounds();
		gc.drawImage(image, 0, 0, pixels.width, pixels.height, MARGIN_PX, MARGIN_PX, pixels.width / density,
				pixels.height / density);
		for (ComparedJobs.Place place : places) {
			Rectangle box = box(place);
			boolean chosen = place.element().equals(selected);
			if (chosen) {
				gc.setBackground(getDisplay().getSystemColor(SWT.COLOR_BLACK));
				gc.setAlpha(CHOSEN);
				gc.fillRectangle(box);
				gc.setAlpha(OPAQUE);
			}
			frame(gc, box, chosen ? 2 : 1, !place.there() ? SWT.LINE_DOT
					: row(place).filter(Row::touches).isPresent() ? SWT.LINE_DASH : SWT.LINE_SOLID);
		}
		gc.setLineWidth(1);
		gc.setLineStyle(SWT.LINE_SOLID);
		int y = getClientArea().height - 2 * AROUND_PX;
		gc.drawLine(MARGIN_PX, y, MARGIN_PX + bar, y);
		gc.drawLine(MARGIN_PX, y - AROUND_PX, MARGIN_PX, y);
		gc.drawLine(MARGIN_PX + bar, y - AROUND_PX, MARGIN_PX + bar, y);
	}

	/** Black on white, so that it is seen on any stock. */
	private void frame(GC gc, Rectangle box, int width, int style) {
		gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_WHITE));
		gc.setLineStyle(SWT.LINE_SOLID);
		gc.setLineWidth(width + 2);
		gc.drawRectangle(box);
		gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_BLACK));
		gc.setLineStyle(style);
		gc.setLineWidth(width);
		gc.drawRectangle(box);
	}
}
