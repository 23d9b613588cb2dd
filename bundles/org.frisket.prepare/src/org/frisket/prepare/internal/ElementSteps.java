package org.frisket.prepare.internal;

import java.util.List;
import java.util.function.Supplier;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Element;
import org.frisket.model.FontRef;
import org.frisket.model.Mat;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.frisket.typography.FontFace;
import org.frisket.typography.FontLibrary;

/** The step for each kind of element, with its results kept by content. */
public final class ElementSteps {

	private static final int KEPT_RESULTS = 512;

	/** A shape and the key it is kept under. */
	public record Made(Object content, Shape shape) {

		public PlacedShape placed(Transform transform) {
			return PlacedShape.of(content, shape, transform);
		}
	}

	private final ContentCache cache = new ContentCache(KEPT_RESULTS);
	private final FontResolver fonts;

	public ElementSteps(FontLibrary library) {
		fonts = new FontResolver(library, cache);
	}

	/** @throws IllegalArgumentException for a kind of element there is no step for */
	public Made shape(Element element, Tolerance tolerance, Monitor monitor) {
		if (element instanceof Wording wording) {
			return wording(wording, tolerance, monitor);
		}
		if (element instanceof Outline outline) {
			record Key(String pathData, Tolerance tolerance) {
			}
			return made(new Key(outline.getPathData(), tolerance), () -> OutlineStep.shape(outline, tolerance, monitor));
		}
		throw new IllegalArgumentException("no step for " + element.getClass().getName());
	}

	private Made wording(Wording wording, Tolerance tolerance, Monitor monitor) {
		record Key(String text, String digest, double height, double lineSpacing, double tracking, Object alignment,
				boolean kerning, boolean ligatures, boolean joined, double touch, List<Shape.Remark> remarks,
				Tolerance tolerance) {
		}
		FontRef reference = wording.getFont();
		FontResolver.Resolved font = fonts.resolve(reference);
		if (font.face().isEmpty()) {
			return new Made(font.remarks(), Shape.nothing(font.remarks()));
		}
		FontFace face = font.face().get();
		Key key = new Key(wording.getText(), face.digest(), wording.getHeight(), wording.getLineSpacing(),
				wording.getTracking(), wording.getAlignment(), wording.isKerning(), wording.isLigatures(),
				wording.isJoined(), wording.getTouch(), font.remarks(), tolerance);
		return made(key, () -> WordingStep.shape(wording, face, font.remarks(), tolerance, monitor));
	}

	/** Where a caret stands in a wording, in its own frame; nowhere if its font is missing. */
	public List<Point> carets(Wording wording, Tolerance tolerance, Monitor monitor) {
		return fonts.resolve(wording.getFont()).face()
				.map(face -> WordingStep.carets(wording, face, tolerance, monitor)).orElse(List.of());
	}

	/**
	 * A mat is computed in the frame of the first element before it, so that moving all of them together moves the mat
	 * without computing it again.
	 */
	public PlacedShape mat(Mat mat, List<PlacedShape> before, Tolerance tolerance, Monitor monitor, Transform own) {
		record Place(Object content, Transform transform) {
		}
		record Key(List<Place> before, double distance, Object corners, double mitreLimit, Object holes,
				double smoothing, Tolerance tolerance) {
		}
		if (before.isEmpty()) {
			return PlacedShape.of(List.of(), Shape.EMPTY, own);
		}
		Transform first = before.get(0).transform();
		Transform toFirst = Transform.translation(-first.e(), -first.f());
		List<Place> places = before.stream()
				.map(shape -> new Place(shape.content(), shape.transform().then(toFirst))).toList();
		Key key = new Key(places, mat.getDistance(), mat.getCorners(), mat.getMitreLimit(), mat.getHoles(),
				mat.getSmoothing(), tolerance);
		Made made = made(key, () -> MatStep.shape(mat, before.stream()
				.map(shape -> shape.shape().region().transformed(shape.transform().then(toFirst))).toList(), tolerance,
				monitor));
		return made.placed(Transform.translation(first.e(), first.f()).then(own));
	}

	public PlacedShape matBehindItself(Transform own) {
		return PlacedShape.of("behind itself", MatStep.behindItself(), own);
	}

	private Made made(Object key, Supplier<Shape> computation) {
		return new Made(key, cache.get(key, computation));
	}
}
