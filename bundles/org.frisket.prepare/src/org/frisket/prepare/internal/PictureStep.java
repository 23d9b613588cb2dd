package org.frisket.prepare.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.model.Matrix;
import org.frisket.model.PictureEdge;
import org.frisket.prepare.Placeholder;
import org.frisket.prepare.Severity;
import org.frisket.prepare.Uncleaned;
import org.frisket.prepare.pictures.DecodedPictures;
import org.frisket.prepare.pictures.PictureFile;
import org.frisket.prepare.pictures.PicturePreviews;
import org.frisket.prepare.pictures.PictureSizes;
import org.frisket.prepare.pictures.PictureSource;
import org.frisket.prepare.pictures.UnreadablePictureException;
import org.frisket.print.picture.Resolution;

/**
 * A picture to the rectangle it fills, or to the contour of its art. One that cannot be read is not printed, but
 * mats still follow its rectangle, and so they do where no contour is found.
 */
final class PictureStep {

	/** At 1200 dots to the inch in print, one more would make more of them in its own frame than {@link Resolution#MOST}. */
	private static final int MOST_DOUBLINGS = 4;
	private static final double ROUNDING = 1e-9;

	private PictureStep() {
	}

	/**
	 * @param width in mm, as {@code height} is
	 * @param times how many times larger it is in print; for what is drawn as fine as the print needs it
	 * @param edge  how its contour is found; null for its rectangle
	 */
	static Shape shape(PictureSource source, double width, double height, double times, PictureEdge edge, Monitor monitor) {
		if (!(width > 0 && height > 0)) {
			return Shape.nothing(new Shape.Remark("picture-flat", Severity.BLOCKING, Point.ORIGIN,
					Messages.PictureStep_flat, Messages.PictureStep_flatCure));
		}
		Region rectangle = rectangle(width, height);
		Point centre = rectangle.bounds().centre();
		if (!source.trouble().isEmpty()) {
			return Shape.drawn(rectangle, List.of(), uncleaned(rectangle), List.of(new Shape.Remark(Placeholder.PICTURE_MISSING,
					Severity.BLOCKING, centre, NLS.bind(Messages.PictureStep_missing, source.link(), source.trouble()),
					Messages.PictureStep_missingCure)));
		}
		List<Shape.Remark> remarks = new ArrayList<>();
		if (source.isLinked()) {
			remarks.add(new Shape.Remark(Placeholder.PICTURE_LINKED, Severity.NOTE, centre,
					NLS.bind(Messages.PictureStep_linked, source.link()), Messages.PictureStep_linkedCure));
		}
		try {
			if (edge == null) {
				tellDamage(PicturePreviews.of(source.bytes(), source.page(), monitor).damage(), centre, remarks);
				return new Shape(rectangle, List.of(), uncleaned(rectangle), remarks);
			}
			DecodedPictures.Whole whole = DecodedPictures.of(source.bytes(), source.page(), times * width, monitor);
			tellDamage(whole.damage(), centre, remarks);
			return traced(whole, width, height, edge, rectangle, remarks, monitor);
		} catch (UnreadablePictureException e) {
			remarks.add(new Shape.Remark(Placeholder.PICTURE_UNREADABLE, Severity.BLOCKING, centre,
					NLS.bind(Messages.PictureStep_unreadable, e.getMessage()), Messages.PictureStep_again));
			return Shape.drawn(rectangle, List.of(), uncleaned(rectangle), remarks);
		}
	}

	/**
	 * How many times larger a picture is in print than its own frame, if it is drawn for it. In powers of two, so that it is
	 * not traced anew at each step of its size; 1 for one that has pixels.
	 *
	 * @param matrix null for none
	 */
	static double times(PictureSource source, Matrix matrix) {
		double scale = matrix == null ? 1 : Math.hypot(matrix.a(), matrix.b());
		if (!(scale > 0) || !Double.isFinite(scale) || source.bytes() == null || !isDrawn(source)) {
			return 1;
		}
		int doublings = (int) Math.ceil(Math.log(scale) / Math.log(2) - ROUNDING);
		return Math.pow(2, Math.max(-MOST_DOUBLINGS, Math.min(MOST_DOUBLINGS, doublings)));
	}

	private static boolean isDrawn(PictureSource source) {
		try {
			return PictureSizes.isDrawn(source.bytes()) || PictureFile.of(source.bytes(), source.page()).isDrawn();
		} catch (UnreadablePictureException e) {
			// told when it is traced
			return false;
		}
	}

	private static void tellDamage(Optional<String> damage, Point centre, List<Shape.Remark> remarks) {
		damage.ifPresent(reason -> remarks.add(new Shape.Remark("picture-damaged", Severity.CAUTION, centre,
				NLS.bind(Messages.PictureStep_damaged, reason), Messages.PictureStep_again)));
	}

	private static Shape traced(DecodedPictures.Whole whole, double width, double height, PictureEdge edge, Region rectangle,
			List<Shape.Remark> remarks, Monitor monitor) {
		EdgeTrace trace = EdgeTrace.of(whole.pixels(), width, height, edge, monitor);
		remarks.addAll(trace.remarks());
		return trace.region().isEmpty() ? Shape.drawn(rectangle, List.of(), uncleaned(rectangle), remarks)
				: new Shape(trace.region(), List.of(), uncleaned(trace.region()), remarks);
	}

	private static Uncleaned uncleaned(Region region) {
		return new Uncleaned(region.toOutline(), List.of(), Transform.IDENTITY);
	}

	/** Counter-clockwise to the viewer. */
	private static Region rectangle(double width, double height) {
		return new Region(List.of(new Piece(Contour.polygon(List.of(Point.ORIGIN, new Point(0, height),
				new Point(width, height), new Point(width, 0))), List.of())));
	}
}
