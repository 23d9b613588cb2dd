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
	private List<Point> places = List.of();

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
		return places;
	}

	void setPlaces(List<Point> newPlaces) {
		places = List.copyOf(newPlaces);
	}

	/** Stands before the character of this index; until its place is worked out, at the nearest that is known. */
	void show(Wording wording, int index) {
		Point place = places.isEmpty() ? Point.ORIGIN : places.get(Math.min(index, places.size() - 1));
		Transform toJob = PictureMaker.transform(wording.getTransform());
		figure.stand(toJob.apply(new Point(place.x(), place.y() + BELOW * wording.getHeight())),
				toJob.apply(new Point(place.x(), place.y() - ABOVE * wording.getHeight())));
	}

	/** Shows the letters from one index to before another as selected; none if they are the same. */
	void showRange(Wording wording, int start, int end) {
		Transform toJob = PictureMaker.transform(wording.getTransform());
		double height = wording.getHeight();
		List<List<Point>> letters = new ArrayList<>();
		for (int i = start; i < Math.min(end, places.size() - 1); i++) {
			Point from = places.get(i);
			Point to = places.get(i + 1);
			// letters that stand below each other are as wide as they are high; after the last of a line there is nothing
			boolean below = Math.abs(to.y() - from.y()) > Math.abs(to.x() - from.x());
			Point side = !below ? to : isLineEnd(wording, i) ? from : new Point(from.x() + height, from.y());
			letters.add(Stream.of(shifted(from, -ABOVE * height), shifted(side, -ABOVE * height),
					shifted(side, BELOW * height), shifted(from, BELOW * height)).map(toJob::apply).toList());
		}
		range.show(letters);
	}

	private static boolean isLineEnd(Wording wording, int index) {
		return wording.getText() != null && index < wording.getText().length() && wording.getText().charAt(index) == '\n';
	}

	private static Point shifted(Point place, double down) {
		return new Point(place.x(), place.y() + down);
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
			Point place = places.get(i);
			// the middle of a capital stands for its line
			double distance = Math.abs(place.x() - own.x())
					+ LINE_WEIGHT * Math.abs(place.y() - wording.getHeight() / 2 - own.y());
			if (distance < least) {
				least = distance;
				best = i;
			}
		}
		return best;
	}

	/** The index of the letter that a place on the bench lies in, in mm; {@code otherwise} if none is known. */
	int letterAt(Wording wording, Point mm, int otherwise) {
		int nearest = nearest(wording, mm, otherwise);
		Transform toJob = PictureMaker.transform(wording.getTransform());
		boolean before = nearest > 0 && nearest < places.size() && toJob.determinant() != 0
				&& toJob.inverse().apply(mm).x() < places.get(nearest).x();
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
