package org.frisket.ui.bench.internal.typing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.Wording;
import org.frisket.prepare.wording.CaretPlace;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.figures.CaretFigure;
import org.frisket.ui.bench.internal.figures.RangeFigure;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.bench.internal.picture.PictureMaker;

/** The caret as it is seen in a wording, at one of the places that were worked out for its text. */
final class WordingCaret {

	/** From its place on the baseline to its ends, in heights of a capital. */
	private static final double ABOVE = 1.15;
	private static final double BELOW = 0.25;
	/** How much more a line counts than a letter when the nearest place is sought. */
	private static final double LINE_WEIGHT = 100;

	private final GraphicalViewer viewer;
	private final CaretFigure figure;
	private final RangeFigure range;
	private List<CaretPlace> places = List.of();

	WordingCaret(GraphicalViewer viewer) {
		this.viewer = viewer;
		figure = new CaretFigure(zoom());
		range = new RangeFigure(zoom());
		layer().add(range);
		layer().add(figure);
	}

	CaretFigure figure() {
		return figure;
	}

	RangeFigure rangeFigure() {
		return range;
	}

	/** Places in the wording's own frame, one for each index of its text; before the first ones come, its origin. */
	List<Point> places() {
		return places.stream().map(CaretPlace::foot).toList();
	}

	void setPlaces(List<CaretPlace> newPlaces) {
		places = List.copyOf(newPlaces);
	}

	/** Stands before the character of this index; until its place is worked out, at the nearest that is known. */
	void show(Wording wording, int index) {
		CaretPlace place = places.isEmpty() ? CaretPlace.FIRST : places.get(Math.min(index, places.size() - 1));
		Transform toJob = PictureMaker.transform(wording.getTransform());
		figure.stand(toJob.apply(place.above(-BELOW * wording.getHeight())),
				toJob.apply(place.above(ABOVE * wording.getHeight())));
	}

	/** Shows the letters from one index to before another as selected; none if they are the same. */
	void showRange(Wording wording, int start, int end) {
		Transform toJob = PictureMaker.transform(wording.getTransform());
		double height = wording.getHeight();
		List<List<Point>> letters = new ArrayList<>();
		for (int i = start; i < Math.min(end, places.size() - 1); i++) {
			CaretPlace from = places.get(i);
			CaretPlace to = places.get(i + 1);
			Point step = from.seen(to.foot());
			// letters that stand below each other are as wide as they are high; after the last of a line there is nothing
			boolean below = Math.abs(step.y()) > Math.abs(step.x());
			CaretPlace side = !below ? to : isLineEnd(wording, i) ? from : beside(from, height);
			letters.add(Stream.of(from.above(ABOVE * height), side.above(ABOVE * height), side.above(-BELOW * height),
					from.above(-BELOW * height)).map(toJob::apply).toList());
		}
		range.show(letters);
	}

	private static boolean isLineEnd(Wording wording, int index) {
		return wording.getText() != null && index < wording.getText().length() && wording.getText().charAt(index) == '\n';
	}

	private static CaretPlace beside(CaretPlace place, double mm) {
		return new CaretPlace(place.foot().plus(place.up().quarterTurn().times(mm)), place.up());
	}

	/** Scrolls to where it stands. */
	void reveal() {
		Point foot = figure.foot();
		Point head = figure.head();
		zoom().reveal(new Point((foot.x() + head.x()) / 2, (foot.y() + head.y()) / 2));
	}

	/** The index whose place is nearest to one on the bench, in mm; {@code otherwise} if none is known. */
	int nearest(Wording wording, Point mm, int otherwise) {
		Transform toJob = PictureMaker.transform(wording.getTransform());
		if (toJob.determinant() == 0) {
			return otherwise;
		}
		Point own = toJob.inverse().apply(mm);
		int best = otherwise;
		double least = Double.POSITIVE_INFINITY;
		for (int i = 0; i < places.size(); i++) {
			// the middle of a capital stands for its line
			double distance = distance(places.get(i), wording.getHeight() / 2, own);
			if (distance < least) {
				least = distance;
				best = i;
			}
		}
		return best;
	}

	/** On a curve a line has no height of its own, so there the way itself counts. */
	private static double distance(CaretPlace place, double middle, Point own) {
		if (!place.isStraight()) {
			return place.above(middle).distance(own);
		}
		Point seen = place.seen(own);
		return Math.abs(seen.x()) + LINE_WEIGHT * Math.abs(seen.y() + middle);
	}

	/** The index of the letter that a place on the bench lies in, in mm; {@code otherwise} if none is known. */
	int letterAt(Wording wording, Point mm, int otherwise) {
		int nearest = nearest(wording, mm, otherwise);
		Transform toJob = PictureMaker.transform(wording.getTransform());
		boolean before = nearest > 0 && nearest < places.size() && toJob.determinant() != 0
				&& places.get(nearest).seen(toJob.inverse().apply(mm)).x() < 0;
		return before ? nearest - 1 : nearest;
	}

	void remove() {
		layer().remove(range);
		layer().remove(figure);
	}

	private CanvasZoom zoom() {
		return ((JobPart) viewer.getContents()).zoom();
	}

	private IFigure layer() {
		return LayerManager.Helper.find(viewer.getContents()).getLayer(LayerConstants.SCALED_FEEDBACK_LAYER);
	}
}
