package org.frisket.orders.paper;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.regex.Pattern;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Transform;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.page.AwtPath;
import org.frisket.page.Ink;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;

/**
 * A job small enough for a row of a table: parts in the colours of their layers, other lines in the ink of what is done.
 * Pictures of pixels are a grey plate; at this size nobody would know them again.
 */
public final class JobThumbnail {

	private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}");
	private static final Color PLATE = new Color(0xb4, 0xb4, 0xb0);
	private static final Color EDGE = new Color(0, 0, 0, 0x60);
	private static final float LINE_PX = 1;

	private final Graphics2D graphics;
	private final AffineTransform place;

	private JobThumbnail(Graphics2D graphics, AffineTransform place) {
		this.graphics = graphics;
		this.place = place;
	}

	/**
	 * On a transparent ground, as large as the room allows and in its middle.
	 *
	 * @param width  of the picture in pixels, as is {@code height}
	 * @return empty if there is nothing to see of the job
	 */
	public static Optional<BufferedImage> of(PreparedJob job, int width, int height) {
		Bounds shown = job.visibleBounds();
		if (shown.isEmpty()) {
			return Optional.empty();
		}
		double scale = Math.min((width - 2) / Math.max(shown.width(), Double.MIN_NORMAL),
				(height - 2) / Math.max(shown.height(), Double.MIN_NORMAL));
		BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
		Graphics2D graphics = image.createGraphics();
		graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
		graphics.setStroke(new BasicStroke(LINE_PX));
		JobThumbnail thumbnail = new JobThumbnail(graphics, new AffineTransform(scale, 0, 0, scale,
				(width - shown.width() * scale) / 2 - shown.minX() * scale,
				(height - shown.height() * scale) / 2 - shown.minY() * scale));
		for (PreparedLayer layer : job.layers()) {
			layer.shown().forEach(element -> thumbnail.paint(element, layer.layer().getColour()));
		}
		graphics.dispose();
		return Optional.of(image);
	}

	private void paint(PreparedElement element, String colour) {
		Path2D region = AwtPath.of(element.region().toOutline().contours());
		region.transform(place);
		Path2D lines = AwtPath.of(element.lines());
		lines.transform(place);
		boolean part = element.has(OperationKind.CUT) || element.has(OperationKind.KISS_CUT);
		if (element.isWithoutEdge() && element.picture().isPresent()) {
			plate(element.picture().get().place());
		} else if (part && element.picture().isEmpty() && colour != null && COLOUR.matcher(colour).matches()) {
			graphics.setColor(Color.decode(colour));
			graphics.fill(region);
			graphics.setColor(EDGE);
			graphics.draw(region);
		} else if (element.has(OperationKind.PRINT)) {
			graphics.setColor(PLATE);
			graphics.fill(region);
		}
		for (Operation operation : element.operations()) {
			if (operation.getKind() != OperationKind.PRINT) {
				float[] ink = Ink.of(operation.getKind()).rgb();
				graphics.setColor(new Color(ink[0], ink[1], ink[2]));
				graphics.draw(lines);
				if (!part) {
					graphics.draw(region);
				}
			}
		}
	}

	/** Where a picture lies, whose own frame is a square with a side of 1. */
	private void plate(Transform picture) {
		Path2D plate = new Path2D.Double();
		plate.moveTo(0, 0);
		plate.lineTo(1, 0);
		plate.lineTo(1, 1);
		plate.lineTo(0, 1);
		plate.closePath();
		plate.transform(new AffineTransform(picture.a(), picture.b(), picture.c(), picture.d(), picture.e(), picture.f()));
		plate.transform(place);
		graphics.setColor(PLATE);
		graphics.fill(plate);
	}
}
