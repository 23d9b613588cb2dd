package org.frisket.ui.orders.internal.today;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageGcDrawer;
import org.eclipse.swt.widgets.Control;
import org.frisket.material.shelf.PaperColour;
import org.frisket.ui.ThemeColour;

/** Small pieces of card in a colour, as images that live as long as the control that shows them. */
final class Swatches {

	private static final int SIZE_PX = 14;

	private final Control control;
	private final Map<String, Image> images = new HashMap<>();

	Swatches(Control control) {
		this.control = control;
		control.addDisposeListener(event -> images.values().forEach(Image::dispose));
	}

	/** @param colour as {@code #rrggbb}. @return null if it is none: the colour is the stock's then */
	Image of(String colour) {
		OptionalInt rgb = PaperColour.of(colour);
		return rgb.isEmpty() ? null : images.computeIfAbsent(colour, key -> drawn(rgb.getAsInt()));
	}

	private Image drawn(int rgb) {
		ImageGcDrawer drawer = (gc, width, height) -> draw(gc, width, height, rgb);
		return new Image(control.getDisplay(), drawer, SIZE_PX, SIZE_PX);
	}

	private static void draw(GC gc, int width, int height, int rgb) {
		gc.setBackground(new Color(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff));
		gc.fillRectangle(0, 0, width, height);
		gc.setForeground(ThemeColour.BENCH_SHEET_EDGE.colour());
		gc.drawRectangle(0, 0, width - 1, height - 1);
	}
}
