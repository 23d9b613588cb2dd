package org.frisket.prepare.internal.cures;

import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.editing.arranging.TransformElements;
import org.frisket.editing.elements.ChangeOperation;
import org.frisket.editing.shapes.ChangePicture;
import org.frisket.geometry.Point;
import org.frisket.model.Element;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Placeholder;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Cures;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.pictures.PictureFile;
import org.frisket.prepare.pictures.PictureSource;
import org.frisket.prepare.pictures.UnreadablePictureException;

/** Against a picture without an edge that a blade or a pen would follow, and one that is not in the job. */
public final class PictureCures implements Cures {

	private static final double TENTHS = 10;

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return switch (finding.id()) {
		case JobPreparer.PICTURE_WORKED -> List.of(
				Cure.of(Messages.PictureCures_edge, finding.element(), Picture.class,
						picture -> ChangePicture.edged(List.of(picture), true)),
				Cure.of(Messages.PictureCures_print, finding.element(), Element.class,
						element -> ChangeOperation.kind(List.of(element), OperationKind.PRINT)));
		case Placeholder.PICTURE_LINKED -> trial.element(finding).filter(Picture.class::isInstance)
				.map(picture -> kept(finding, PictureSource.of((Picture) picture))).orElse(List.of());
		default -> List.of();
		};
	}

	private static List<Cure> kept(Finding finding, PictureSource source) {
		try {
			String mediaType = PictureFile.of(source.bytes(), source.page()).mediaType();
			return List.of(Cure.of(Messages.PictureCures_keep, finding.element(), Picture.class,
					picture -> ChangePicture.keep(picture, source.bytes(), mediaType)));
		} catch (UnreadablePictureException e) {
			return List.of();
		}
	}

	/** It is made smaller until its pixels are fine enough. */
	public static List<Cure> ofCoarse(Finding finding, Trial trial) {
		double percent = Math.floor(100 * finding.measured().orElse(0) / finding.limit().orElse(1) * TENTHS) / TENTHS;
		if (!(percent >= 1)) {
			return List.of();
		}
		Point centre = trial.prepared(finding).map(PreparedElement::bounds).orElseThrow().centre();
		return List.of(Cure.of(NLS.bind(Messages.PictureCures_smaller, Figures.number(percent, 1)), finding.element(),
				Picture.class, picture -> TransformElements.scale(List.of(picture), percent / 100, percent / 100, centre.x(),
						centre.y())));
	}

	/** Its print goes on beyond the cut. */
	public static List<Cure> ofMissingBleed(Finding finding) {
		double bleed = finding.limit().orElse(0);
		return List.of(Cure.of(NLS.bind(Messages.PictureCures_bleed, Figures.length(bleed, 1)), finding.element(),
				Picture.class, picture -> ChangePicture.bleed(List.of(picture), bleed)));
	}

	/** A wider border, where the cut runs round the picture itself. */
	public static List<Cure> ofUnsafe(Finding finding, Trial trial) {
		double border = finding.limit().orElse(0);
		return trial.element(finding).filter(Picture.class::isInstance).map(Picture.class::cast)
				.filter(picture -> picture.getEdge() != null && picture.getEdge().getBorder() > 0)
				.map(each -> List.of(Cure.of(NLS.bind(Messages.PictureCures_border, Figures.length(border, 1)), finding.element(),
						Picture.class, picture -> ChangePicture.border(List.of(picture), border))))
				.orElse(List.of());
	}
}
