package org.frisket.ui.bench.internal.picture;

import java.awt.AlphaComposite;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.List;

import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.prepare.PreparedPicture;
import org.frisket.prepare.pictures.PicturePreviews;
import org.frisket.prepare.pictures.UnreadablePictureException;

/**
 * The pixels of a picture, turned as it lies, ready for the screen.
 *
 * @param data for an upright image
 * @param box  that the image fills, in mm
 */
public record Pixels(ImageData data, Bounds box) {

	/** Of the longer side, as a turned picture is painted. */
	private static final int LONGEST = 2048;
	private static final double FLATNESS = 0.25;
	/** Of what is cut away: there to be compared with the contour, and no more. */
	private static final float FAINT = 0.25f;
	private static final int ALL = 0xff;
	private static final int ALPHA = 24;

	/** All of it. Takes its time: not for the UI thread. Null for a picture that cannot be shown. */
	public static Pixels of(PreparedPicture picture) {
		return of(picture, null);
	}

	/**
	 * Takes its time: not for the UI thread. Null for a picture that cannot be shown.
	 *
	 * @param piece what is cut out of it, beyond which it is faint; null for none
	 */
	static Pixels of(PreparedPicture picture, Region piece) {
		try {
			BufferedImage preview = PicturePreviews.of(picture.image(), picture.page()).image();
			Bounds box = box(picture.place());
			double scale = Math.min(Math.max(preview.getWidth() / length(picture.place().a(), picture.place().b()),
					preview.getHeight() / length(picture.place().c(), picture.place().d())),
					LONGEST / Math.max(box.width(), box.height()));
			int width = (int) Math.max(1, Math.round(box.width() * scale));
			int height = (int) Math.max(1, Math.round(box.height() * scale));
			BufferedImage turned = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
			Transform place = picture.place().then(Transform.translation(-box.minX(), -box.minY()))
					.then(Transform.scaling(width / box.width(), height / box.height()));
			AffineTransform pixels = new AffineTransform(place.a(), place.b(), place.c(), place.d(), place.e(), place.f());
			pixels.scale(1.0 / preview.getWidth(), 1.0 / preview.getHeight());
			Graphics2D graphics = turned.createGraphics();
			graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
			if (piece == null) {
				graphics.drawImage(preview, pixels, null);
			} else {
				graphics.setComposite(AlphaComposite.SrcOver.derive(FAINT));
				graphics.drawImage(preview, pixels, null);
				graphics.clip(path(piece.transformed(Transform.translation(-box.minX(), -box.minY()))
						.transformed(Transform.scaling(width / box.width(), height / box.height()))));
				graphics.setComposite(AlphaComposite.Clear);
				graphics.fillRect(0, 0, width, height);
				graphics.setComposite(AlphaComposite.SrcOver);
				graphics.drawImage(preview, pixels, null);
			}
			graphics.dispose();
			return new Pixels(data(turned), box);
		} catch (UnreadablePictureException e) {
			// it is told as a finding
			return null;
		}
	}

	/** In the pixels of the image. */
	private static Path2D path(Region region) {
		Path2D path = new Path2D.Double();
		for (Contour contour : region.contours()) {
			List<Point> corners = contour.flattened(FLATNESS);
			for (int i = 0; i < corners.size(); i++) {
				if (i == 0) {
					path.moveTo(corners.get(i).x(), corners.get(i).y());
				} else {
					path.lineTo(corners.get(i).x(), corners.get(i).y());
				}
			}
			path.closePath();
		}
		return path;
	}

	private static double length(double x, double y) {
		return Math.max(Double.MIN_NORMAL, Math.hypot(x, y));
	}

	private static Bounds box(Transform place) {
		return Bounds.of(place.apply(new Point(0, 0))).with(place.apply(new Point(1, 0)))
				.with(place.apply(new Point(0, 1))).with(place.apply(new Point(1, 1)));
	}

	/** For the window system, with what can be seen through. Takes its time: not for the UI thread. */
	public static ImageData data(BufferedImage image) {
		int width = image.getWidth();
		int height = image.getHeight();
		ImageData data = new ImageData(width, height, ALPHA, new PaletteData(0xff0000, 0xff00, 0xff));
		int[] row = new int[width];
		byte[] alphas = new byte[width];
		for (int y = 0; y < height; y++) {
			image.getRGB(0, y, width, 1, row, 0, width);
			for (int x = 0; x < width; x++) {
				alphas[x] = (byte) (row[x] >> ALPHA & ALL);
				row[x] &= 0xffffff;
			}
			data.setPixels(0, y, width, row, 0);
			data.setAlphas(0, y, width, alphas, 0);
		}
		return data;
	}
}
