package org.frisket.export.png;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;

import org.frisket.export.OperationInk;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Transform;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.page.AwtPath;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedLayer;
import org.frisket.prepare.PreparedPicture;

/** Paints in millimetres on an image. */
final class ProofPainter implements AutoCloseable {

	static final Color INK = new Color(0x33, 0x33, 0x33);
	private static final Color PAPER = Color.WHITE;
	private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}");
	private static final double HATCH_STEP = 2;
	/** Of the longer side of a picture, most of which lies outside of the proof then. */
	private static final int MOST_PIXELS = 10_000;

	private final Graphics2D graphics;
	private final AffineTransform millimetres;

	ProofPainter(BufferedImage image, double pixelsPerMm) {
		graphics = image.createGraphics();
		graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
		graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
		graphics.setColor(PAPER);
		graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
		millimetres = AffineTransform.getScaleInstance(pixelsPerMm, pixelsPerMm);
	}

	/** Puts the origin of what follows at this place of the page. */
	void at(double x, double y) {
		AffineTransform transform = new AffineTransform(millimetres);
		transform.translate(x, y);
		graphics.setTransform(transform);
	}

	/** @throws IOException if a picture that could be read before cannot be now */
	void layer(PreparedLayer layer) throws IOException {
		for (PreparedElement element : layer.shown()) {
			Path2D region = AwtPath.of(element.region().contours());
			Path2D lines = AwtPath.of(element.lines());
			String colour = layer.layer().getColour();
			boolean part = element.has(OperationKind.CUT) || element.has(OperationKind.KISS_CUT);
			if (part && colour != null && COLOUR.matcher(colour).matches()) {
				fill(region, Color.decode(colour));
			}
			boolean pixels = element.has(OperationKind.PRINT) && element.picture().isPresent();
			if (pixels) {
				Shape before = graphics.getClip();
				element.printedPieces().ifPresent(pieces -> graphics.clip(AwtPath.of(pieces.contours())));
				picture(element.picture().get());
				graphics.setClip(before);
			}
			for (Operation operation : element.operations()) {
				if (pixels && operation.getKind() == OperationKind.PRINT) {
					continue;
				}
				if (operation.getKind() == OperationKind.PRINT) {
					hatch(region);
				}
				List<Contour> dashes = element.dashes(operation);
				if (dashes.isEmpty()) {
					stroke(region, operation.getKind(), true);
					stroke(lines, operation.getKind(), true);
				} else {
					stroke(AwtPath.of(dashes), operation.getKind(), false);
				}
			}
		}
	}

	private void picture(PreparedPicture picture) throws IOException {
		Transform place = picture.place();
		// as many as are painted: those of a finer picture are mixed into them
		BufferedImage image = picture.file().decode((int) Math.ceil(Math.min(MOST_PIXELS,
				picture.longest() * millimetres.getScaleX()))).image();
		AffineTransform pixels = new AffineTransform(place.a(), place.b(), place.c(), place.d(), place.e(), place.f());
		pixels.scale(1.0 / image.getWidth(), 1.0 / image.getHeight());
		graphics.drawImage(image, pixels, null);
	}

	void fill(Shape shape, Color colour) {
		graphics.setColor(colour);
		graphics.fill(shape);
	}

	/** @param patterned whether the look of the operation breaks the line, which real dashes are already */
	private void stroke(Shape shape, OperationKind kind, boolean patterned) {
		OperationInk ink = OperationInk.of(kind);
		graphics.setColor(Color.decode(ink.colour()));
		if (kind == OperationKind.DRAW) {
			// a thin double line: the border of a line
			BasicStroke middle = new BasicStroke((float) (4 * ink.width()), BasicStroke.CAP_BUTT,
					BasicStroke.JOIN_ROUND);
			graphics.setStroke(new BasicStroke((float) ink.width()));
			graphics.draw(middle.createStrokedShape(shape));
			return;
		}
		graphics.setStroke(new BasicStroke((float) ink.width(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1,
				patterned ? pattern(ink) : null, 0));
		graphics.draw(shape);
	}

	private static float[] pattern(OperationInk ink) {
		if (ink.pattern().isEmpty()) {
			return null;
		}
		float[] lengths = new float[ink.pattern().size()];
		for (int i = 0; i < lengths.length; i++) {
			lengths[i] = ink.pattern().get(i).floatValue();
		}
		return lengths;
	}

	private void hatch(Shape area) {
		OperationInk ink = OperationInk.of(OperationKind.PRINT);
		Shape before = graphics.getClip();
		graphics.clip(area);
		graphics.setColor(Color.decode(ink.colour()));
		graphics.setStroke(new BasicStroke((float) ink.width()));
		Rectangle2D box = area.getBounds2D();
		for (double x = box.getMinX() - box.getHeight(); x < box.getMaxX(); x += HATCH_STEP) {
			graphics.draw(new Line2D.Double(x, box.getMaxY(), x + box.getHeight(), box.getMinY()));
		}
		graphics.setClip(before);
	}

	@Override
	public void close() {
		graphics.dispose();
	}
}
