package org.frisket.ui.orders.internal;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.frisket.geometry.Monitor;

/** What is needed to draw jobs off the UI thread and show them on the screen. */
public final class Pictures {

	private Pictures() {
	}

	/** The same picture for the screen. @param image without transparency, a whole number to each pixel */
	public static ImageData data(BufferedImage image) {
		ImageData data = new ImageData(image.getWidth(), image.getHeight(), 32,
				new PaletteData(0xff0000, 0xff00, 0xff));
		int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
		for (int y = 0; y < image.getHeight(); y++) {
			data.setPixels(0, y, image.getWidth(), pixels, y * image.getWidth());
		}
		return data;
	}

	/** Of work that can be called off, and that nobody watches. */
	public static Monitor monitor(IProgressMonitor monitor) {
		return new Monitor() {

			@Override
			public boolean isCancelled() {
				return monitor.isCanceled();
			}

			@Override
			public void worked(double fraction) {
				// nobody watches
			}
		};
	}
}
