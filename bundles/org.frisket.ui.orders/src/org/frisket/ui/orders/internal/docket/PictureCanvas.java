package org.frisket.ui.orders.internal.docket;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.frisket.ui.orders.internal.Named;

/** The picture of a job on white, with the bar by which lengths can be read off it. */
final class PictureCanvas extends Canvas {

	private static final int MARGIN_PX = 8;
	private static final int BAR_PX = 6;

	private final Sight.Picture picture;
	private final Image image;
	private final int width;
	private final int height;

	PictureCanvas(Composite parent, Sight.Picture picture) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
		this.picture = picture;
		image = new Image(getDisplay(), picture.data());
		width = picture.data().width / picture.density();
		height = picture.data().height / picture.density();
		GridDataFactory.fillDefaults().grab(true, false)
				.hint(2 * MARGIN_PX, height + 3 * MARGIN_PX + BAR_PX).applyTo(this);
		addListener(SWT.Paint, event -> paint(event.gc));
		addListener(SWT.Dispose, event -> image.dispose());
		Named.as(picture.text(), this);
	}

	private void paint(GC gc) {
		Rectangle area = getClientArea();
		gc.setBackground(getDisplay().getSystemColor(SWT.COLOR_WHITE));
		gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_BLACK));
		gc.fillRectangle(area);
		Rectangle pixels = image.getBounds();
		gc.drawImage(image, 0, 0, pixels.width, pixels.height, MARGIN_PX, MARGIN_PX, width, height);
		int y = MARGIN_PX + height + MARGIN_PX + BAR_PX;
		gc.drawLine(MARGIN_PX, y, MARGIN_PX + picture.bar(), y);
		gc.drawLine(MARGIN_PX, y - BAR_PX, MARGIN_PX, y);
		gc.drawLine(MARGIN_PX + picture.bar(), y - BAR_PX, MARGIN_PX + picture.bar(), y);
	}
}
