package org.frisket.editing.shapes;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.BackdropRule;
import org.frisket.model.BleedKind;
import org.frisket.model.EdgeHoles;
import org.frisket.model.FrisketFactory;
import org.frisket.model.ImageBytes;
import org.frisket.model.Picture;
import org.frisket.model.PictureEdge;

/** Changes what pictures show, how their edge is found, and how far their print goes on beyond it. */
public final class ChangePicture extends RecordingEdit {

	private static final double MOST_DIFFERENCE = 100;
	/** As far as a print file lets it. */
	private static final double MOST_BLEED = 50;
	private static final double METRE = 1000;

	private final Set<Picture> pictures;
	private final Predicate<Picture> differs;
	private final Consumer<Picture> change;

	private ChangePicture(String name, List<Picture> pictures, Predicate<Picture> differs, Consumer<Picture> change) {
		super(name);
		this.pictures = new LinkedHashSet<>(pictures);
		this.differs = differs;
		this.change = change;
	}

	/** Whether they are worked along the contour of their art, as it is usually found, or fill their rectangle. */
	public static ChangePicture edged(List<Picture> pictures, boolean edged) {
		return new ChangePicture(edged ? Messages.ChangePicture_edge : Messages.ChangePicture_noEdge, pictures,
				picture -> edged != (picture.getEdge() != null),
				picture -> picture.setEdge(edged ? FrisketFactory.INSTANCE.createPictureEdge() : null));
	}

	/** What of them is no art. */
	public static ChangePicture backdrop(List<Picture> pictures, BackdropRule rule) {
		return edge(Messages.ChangePicture_backdrop, pictures, rule, rule != null, PictureEdge::getBackdrop,
				PictureEdge::setBackdrop);
	}

	/** The colour of what is no art, which is then told by it. @param colour as #rrggbb */
	public static ChangePicture colour(List<Picture> pictures, String colour) {
		boolean valid = colour != null && colour.matches("#[0-9a-fA-F]{6}");
		return new ChangePicture(Messages.ChangePicture_colour, pictures,
				picture -> valid && picture.getEdge() != null && !(colour.equals(picture.getEdge().getColour())
						&& picture.getEdge().getBackdrop() == BackdropRule.COLOUR),
				picture -> {
					picture.getEdge().setBackdrop(BackdropRule.COLOUR);
					picture.getEdge().setColour(colour);
				});
	}

	/** How much a colour may differ from that of the backdrop and still be it, in CIE 1976 ΔE*ab up to 100. */
	public static ChangePicture difference(List<Picture> pictures, double difference) {
		return edge(Messages.ChangePicture_difference, pictures, difference, within(difference, 0, MOST_DIFFERENCE),
				PictureEdge::getDifference, PictureEdge::setDifference);
	}

	/** How much lightness a shadow on the backdrop may take, in L* up to 100; 0 for none. */
	public static ChangePicture shadow(List<Picture> pictures, double lightness) {
		return edge(Messages.ChangePicture_shadow, pictures, lightness, within(lightness, 0, MOST_DIFFERENCE),
				PictureEdge::getShadow, PictureEdge::setShadow);
	}

	/** In mm: what is smaller is left out. */
	public static ChangePicture specks(List<Picture> pictures, double mm) {
		return edge(Messages.ChangePicture_specks, pictures, mm, within(mm, 0, METRE), PictureEdge::getSpecks,
				PictureEdge::setSpecks);
	}

	/** What becomes of what the art encloses. */
	public static ChangePicture holes(List<Picture> pictures, EdgeHoles holes) {
		return edge(Messages.ChangePicture_holes, pictures, holes, holes != null, PictureEdge::getHoles,
				PictureEdge::setHoles);
	}

	/** Radius in mm to which the contour is smoothed; 0 for none. */
	public static ChangePicture smoothing(List<Picture> pictures, double radius) {
		return edge(Messages.ChangePicture_smoothing, pictures, radius, within(radius, 0, METRE),
				PictureEdge::getSmoothing, PictureEdge::setSmoothing);
	}

	/** How far the contour goes outside of the art, in mm; negative for inside. */
	public static ChangePicture border(List<Picture> pictures, double mm) {
		return edge(Messages.ChangePicture_border, pictures, mm, within(mm, -METRE, METRE), PictureEdge::getBorder,
				PictureEdge::setBorder);
	}

	/** Whether all parts are joined to one. */
	public static ChangePicture whole(List<Picture> pictures, boolean whole) {
		return edge(Messages.ChangePicture_whole, pictures, whole, true, PictureEdge::isWhole, PictureEdge::setWhole);
	}

	/** How far the print goes on beyond the cut, in mm up to 50; 0 for none. */
	public static ChangePicture bleed(List<Picture> pictures, double mm) {
		return new ChangePicture(Messages.ChangePicture_bleed, pictures,
				picture -> within(mm, 0, MOST_BLEED) && mm != picture.getBleed(), picture -> picture.setBleed(mm));
	}

	/** What is printed there. */
	public static ChangePicture bleedKind(List<Picture> pictures, BleedKind kind) {
		return new ChangePicture(Messages.ChangePicture_bleedKind, pictures,
				picture -> kind != null && kind != picture.getBleedKind(), picture -> picture.setBleedKind(kind));
	}

	/** The picture that was read from a file of its own comes into the job. */
	public static ChangePicture keep(Picture picture, ImageBytes image, String mediaType) {
		return new ChangePicture(Messages.ChangePicture_keep, List.of(picture),
				each -> image != null && each.getLink() != null, each -> show(each, image, mediaType));
	}

	/**
	 * Another picture in the same place, as wide as the one before and so high that it is not distorted; how its edge is
	 * found, its bleed and what is done with it stay.
	 *
	 * @param across pixels of the new one @param down pixels of the new one
	 */
	public static ChangePicture replace(Picture picture, ImageBytes image, String mediaType, int across, int down) {
		return new ChangePicture(Messages.ChangePicture_replace, List.of(picture),
				each -> image != null && across > 0 && down > 0 && !image.equals(each.getImage()), each -> {
					show(each, image, mediaType);
					each.setHeight(each.getWidth() * down / across);
				});
	}

	private static void show(Picture picture, ImageBytes image, String mediaType) {
		picture.setImage(image);
		picture.setMediaType(mediaType);
		picture.setLink(null);
	}

	private static <T> ChangePicture edge(String name, List<Picture> pictures, T value, boolean valid,
			Function<PictureEdge, T> now, BiConsumer<PictureEdge, T> set) {
		return new ChangePicture(name, pictures,
				picture -> valid && picture.getEdge() != null && !Objects.equals(value, now.apply(picture.getEdge())),
				picture -> set.accept(picture.getEdge(), value));
	}

	private static boolean within(double value, double least, double most) {
		return value >= least && value <= most;
	}

	@Override
	public boolean canApply() {
		return Targets.freeInOneJob(pictures) && pictures.stream().anyMatch(differs);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return pictures;
	}

	@Override
	protected void change() {
		pictures.stream().filter(differs).forEach(change);
	}
}
