package org.frisket.prepare.internal;

import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.model.ImageBytes;
import org.frisket.model.Picture;
import org.frisket.prepare.Placeholder;
import org.frisket.prepare.Severity;
import org.frisket.prepare.Uncleaned;
import org.frisket.prepare.pictures.PicturePreviews;
import org.frisket.prepare.pictures.UnreadablePictureException;

/** A picture of pixels to the rectangle it fills. One that cannot be read is not printed, but mats still follow it. */
final class PictureStep {

	private PictureStep() {
	}

	static Shape shape(Picture picture) {
		return shape(picture.getImage(), picture.getWidth(), picture.getHeight());
	}

	private static Shape shape(ImageBytes image, double width, double height) {
		if (!(width > 0 && height > 0)) {
			return Shape.nothing(new Shape.Remark("picture-flat", Severity.BLOCKING, Point.ORIGIN,
					Messages.PictureStep_flat, Messages.PictureStep_flatCure));
		}
		Region region = rectangle(width, height);
		Uncleaned uncleaned = new Uncleaned(region.toOutline(), List.of(), Transform.IDENTITY);
		try {
			Optional<String> damage = PicturePreviews.of(image).damage();
			return new Shape(region, List.of(), uncleaned, damage.map(reason -> new Shape.Remark("picture-damaged",
					Severity.CAUTION, region.bounds().centre(), NLS.bind(Messages.PictureStep_damaged, reason),
					Messages.PictureStep_again)).map(List::of).orElse(List.of()));
		} catch (UnreadablePictureException e) {
			return Shape.drawn(region, List.of(), uncleaned, List.of(new Shape.Remark(Placeholder.PICTURE_UNREADABLE,
					Severity.BLOCKING, region.bounds().centre(), NLS.bind(Messages.PictureStep_unreadable, e.getMessage()),
					Messages.PictureStep_again)));
		}
	}

	/** Counter-clockwise to the viewer. */
	private static Region rectangle(double width, double height) {
		return new Region(List.of(new Piece(Contour.polygon(List.of(Point.ORIGIN, new Point(0, height),
				new Point(width, height), new Point(width, 0))), List.of())));
	}
}
