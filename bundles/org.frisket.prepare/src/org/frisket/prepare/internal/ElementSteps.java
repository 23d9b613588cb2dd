package org.frisket.prepare.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Combination;
import org.frisket.model.Element;
import org.frisket.model.Mat;
import org.frisket.model.Outline;
import org.frisket.model.Picture;
import org.frisket.model.WeedLines;
import org.frisket.model.Wording;
import org.frisket.prepare.internal.wording.Bridgeworks;
import org.frisket.prepare.internal.wording.HeldLetters;
import org.frisket.prepare.internal.wording.LetterPlaces;
import org.frisket.prepare.internal.wording.WordingKey;
import org.frisket.prepare.internal.wording.WordingSource;
import org.frisket.prepare.internal.wording.WordingStep;
import org.frisket.prepare.internal.wording.WordingText;
import org.frisket.prepare.pictures.PictureSource;
import org.frisket.prepare.wording.Bridgework;
import org.frisket.prepare.wording.CaretPlace;
import org.frisket.prepare.wording.LetterPlace;
import org.frisket.typography.Letter;
import org.frisket.typography.source.FontLibrary;

/** The step for each kind of element, with its results kept by content. */
public final class ElementSteps {

	private static final int KEPT_RESULTS = 256;
	/** Shape and place of every element, and as much for what undo may bring back. */
	private static final int RESULTS_PER_ELEMENT = 4;
	/** Far larger than results, and of use only while the mats behind the same elements are made. */
	private static final int KEPT_GROUNDS = 16;
	/** The words of a text, what they grow to in each mat, and that of neighbours together; some kB each. */
	private static final int KEPT_PARTS = 2048;
	/** The stretches between two corners in the mats of a text; far below a kB each. */
	private static final int KEPT_CURVES = 16384;
	/** Those are about the joined words, or the loose letters, of a text. */
	private static final int KEPT_CLUSTERS = 512;
	/** How the words of a text are joined, below a kB each, and the shapes of its letters, some kB each. */
	private static final int KEPT_WORDS = 1024;
	/** Of use only until the carets in a text that was just worked out are asked for. */
	private static final int KEPT_TEXTS = 8;

	/** A shape and the key it is kept under. */
	public record Made(Object content, Shape shape) {
	}

	private final ContentCache cache = new ContentCache(KEPT_RESULTS);
	private final ContentCache grounds = new ContentCache(KEPT_GROUNDS);
	private final ContentCache parts = new ContentCache(KEPT_PARTS);
	private final ContentCache curves = new ContentCache(KEPT_CURVES);
	private final ContentCache clusters = new ContentCache(KEPT_CLUSTERS);
	private final ContentCache words = new ContentCache(KEPT_WORDS);
	private final ContentCache texts = new ContentCache(KEPT_TEXTS);
	private final ContentCache held = new ContentCache(KEPT_TEXTS);
	private final FontResolver fonts;

	public ElementSteps(FontLibrary library) {
		fonts = new FontResolver(library, cache);
	}

	/** Makes room for all that a job of so many elements comes to. */
	public void expect(int elements) {
		cache.holdAtLeast(RESULTS_PER_ELEMENT * elements);
	}

	/** A shape at its place; equal ones are the same object, so that what is made of them can be kept as well. */
	public PlacedShape placed(Made made, Transform transform) {
		record Key(Object content, Transform transform) {
		}
		return cache.get(new Key(made.content(), transform), () -> PlacedShape.of(made.content(), made.shape(), transform));
	}

	/** @throws IllegalArgumentException for a kind of element there is no step for */
	public Made shape(Element element, Tolerance tolerance, Monitor monitor) {
		if (element instanceof Wording wording) {
			return wording(wording, tolerance, monitor);
		}
		if (element instanceof Outline outline) {
			record Key(List<Object> decisions, Tolerance tolerance) {
			}
			return made(new Key(WordingKey.decisions(outline), tolerance), () -> OutlineStep.shape(outline, tolerance, monitor));
		}
		if (element instanceof Picture picture) {
			return picture(picture, monitor);
		}
		throw new IllegalArgumentException("no step for " + element.getClass().getName());
	}

	private Made picture(Picture picture, Monitor monitor) {
		record Key(PictureSource source, double width, double height, double times, List<Object> edge) {
		}
		PictureSource source = PictureSource.of(picture);
		List<Object> edge = picture.getEdge() == null ? List.of() : WordingKey.decisions(picture.getEdge());
		double times = edge.isEmpty() ? 1 : PictureStep.times(source, picture.getTransform());
		return made(new Key(source, picture.getWidth(), picture.getHeight(), times, edge), () -> PictureStep.shape(source,
				picture.getWidth(), picture.getHeight(), times, picture.getEdge(), monitor));
	}

	private Made wording(Wording wording, Tolerance tolerance, Monitor monitor) {
		FontResolver.Resolved font = fonts.resolve(wording.getFont());
		if (font.face().isEmpty()) {
			return new Made(font.remarks(), Shape.nothing(font.remarks()));
		}
		WordingSource source = WordingSource.of(wording, font.face().get(), font.remarks(), fonts::resolve);
		return made(WordingKey.of(source, tolerance), () -> WordingStep.shape(source, text(source, tolerance, monitor),
				() -> held(source, tolerance, monitor), tolerance, monitor));
	}

	/** What holds the letters of a wording, in its own frame; nothing if its font is missing. */
	public Bridgework bridgework(Wording wording, Tolerance tolerance, Monitor monitor) {
		return fonts.resolve(wording.getFont()).face().map(face -> {
			WordingSource source = WordingSource.of(wording, face, List.of(), fonts::resolve);
			return Bridgeworks.of(wording, text(source, tolerance, monitor), held(source, tolerance, monitor));
		}).orElse(Bridgework.NOTHING);
	}

	private HeldLetters held(WordingSource source, Tolerance tolerance, Monitor monitor) {
		return held.get(WordingKey.of(source, tolerance), () -> WordingStep.held(source,
				text(source, tolerance, monitor), clusters::get, tolerance, monitor));
	}

	/** Where a caret stands in a wording, in its own frame; nowhere if its font is missing. */
	public List<CaretPlace> carets(Wording wording, Tolerance tolerance, Monitor monitor) {
		FontResolver.Resolved font = fonts.resolve(wording.getFont());
		return font.face().map(face -> {
			WordingSource source = WordingSource.of(wording, face, font.remarks(), fonts::resolve);
			return WordingStep.carets(source, text(source, tolerance, monitor), monitor);
		}).orElse(List.of());
	}

	/** The letters of a wording in its own frame; none if its font is missing. */
	public List<LetterPlace> letters(Wording wording, Tolerance tolerance, Monitor monitor) {
		FontResolver.Resolved font = fonts.resolve(wording.getFont());
		return font.face().map(face -> LetterPlaces.of(text(
				WordingSource.of(wording, face, font.remarks(), fonts::resolve), tolerance, monitor))).orElse(List.of());
	}

	/** The outline of each letter where it stands, in the wording's own frame; empty without its font. */
	public List<org.frisket.geometry.Outline> letterOutlines(Wording wording, Tolerance tolerance, Monitor monitor) {
		FontResolver.Resolved font = fonts.resolve(wording.getFont());
		return font.face().map(face -> {
			WordingSource source = WordingSource.of(wording, face, font.remarks(), fonts::resolve);
			return text(source, tolerance, monitor).placed().letters().stream().map(Letter::outline).toList();
		}).orElse(List.of());
	}

	/** The letters where they stand. */
	private WordingText text(WordingSource source, Tolerance tolerance, Monitor monitor) {
		return texts.get(WordingKey.of(source, tolerance), () -> WordingText.of(source, words::get, tolerance, monitor));
	}

	/** Something made from others, and where they stood when their shapes were taken. */
	private record Place(Object content, Transform transform) {
	}

	/**
	 * What follows others is computed in the frame of the first of them, so that moving all of them together moves it
	 * without computing it again.
	 *
	 * @param before what it is made from
	 * @throws IllegalArgumentException for a kind of element there is no step for
	 */
	public PlacedShape following(Element follower, List<PlacedShape> before, Tolerance tolerance, Monitor monitor,
			Transform own) {
		record Key(Object kind, List<Place> before, List<Object> decisions, Tolerance tolerance) {
		}
		if (before.isEmpty()) {
			return PlacedShape.of(List.of(), Shape.EMPTY, own);
		}
		Transform first = before.get(0).transform();
		Transform toFirst = Transform.translation(-first.e(), -first.f());
		List<Place> places = before.stream()
				.map(shape -> new Place(shape.content(), shape.transform().then(toFirst))).toList();
		Key key = new Key(follower.eClass(), places, WordingKey.decisions(follower), tolerance);
		Made made = made(key, () -> shape(follower, before, places, toFirst, tolerance, monitor));
		return placed(made, Transform.translation(first.e(), first.f()).then(own));
	}

	private Shape shape(Element follower, List<PlacedShape> before, List<Place> places, Transform toFirst,
			Tolerance tolerance, Monitor monitor) {
		record GroundKey(List<Place> before, Tolerance tolerance) {
		}
		List<Region> bodies = before.stream()
				.map(shape -> moved(shape.shape().body(), shape.transform().then(toFirst))).toList();
		if (follower instanceof Mat mat) {
			return MatStep.shape(mat, grounds.get(new GroundKey(places, tolerance),
					() -> MatStep.ground(bodies, parts::get, curves::get, tolerance, monitor)), tolerance, monitor);
		}
		if (follower instanceof Combination combination) {
			List<CombinationStep.Part> all = new ArrayList<>();
			for (int i = 0; i < bodies.size(); i++) {
				all.add(new CombinationStep.Part(bodies.get(i),
						before.get(i).lines().stream().map(line -> line.transformed(toFirst)).toList()));
			}
			return CombinationStep.shape(combination, all, tolerance, monitor);
		}
		if (follower instanceof WeedLines lines) {
			return WeedLinesStep.shape(lines, bodies, tolerance, monitor);
		}
		throw new IllegalArgumentException("no step for " + follower.getClass().getName());
	}

	/** Those that stay where they are stay the same objects, which are soon found again by what is kept. */
	private static Region moved(Region region, Transform transform) {
		return transform.equals(Transform.IDENTITY) ? region : region.transformed(transform);
	}

	public PlacedShape followingItself(Element follower, Transform own) {
		return PlacedShape.of("following itself",
				follower instanceof Mat ? MatStep.behindItself() : CombinationStep.ofItself(), own);
	}

	private Made made(Object key, Supplier<Shape> computation) {
		return new Made(key, cache.get(key, computation));
	}
}
