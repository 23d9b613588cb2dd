package org.frisket.print.picture;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Monitor;
import org.frisket.print.internal.drawn.DrawnArt;

/** Draws art that has no pixels of its own, on nothing. */
final class DrawnPicture {

	private final String name;
	private final DrawnArt art;

	DrawnPicture(String name, DrawnArt art) {
		this.name = name;
		this.art = art;
	}

	BufferedImage image(Head head, Monitor monitor) throws UnreadablePictureException {
		Memory.check(name, head);
		try {
			BufferedImage image = new BufferedImage(head.width, head.height, BufferedImage.TYPE_INT_ARGB);
			Graphics2D graphics = image.createGraphics();
			try {
				draw(graphics, head.width, head.height, monitor);
			} finally {
				graphics.dispose();
			}
			return image;
		} catch (OutOfMemoryError e) {
			// one large piece at once: nothing else is short of memory for it
			throw Memory.shortage(name, head, e);
		}
	}

	void draw(Graphics2D graphics, double width, double height, Monitor monitor) throws UnreadablePictureException {
		try {
			art.draw(graphics, width, height, monitor);
			monitor.check();
		} catch (CancellationException e) {
			throw e;
		} catch (IOException e) {
			throw new UnreadablePictureException(name, e.getMessage(), e);
		} catch (StackOverflowError e) {
			throw new UnreadablePictureException(name, Messages.DrawnPicture_deep, e);
		}
	}
}
