package org.frisket.prepare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Wording;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.fonts.Fitness;
import org.frisket.prepare.internal.ElementSteps;
import org.frisket.prepare.internal.FitnessMeasures;
import org.frisket.prepare.internal.PlacedShape;
import org.frisket.prepare.wording.Bridgework;
import org.frisket.prepare.wording.CaretPlace;
import org.frisket.prepare.wording.LetterPlace;
import org.frisket.typography.source.FontLibrary;

/**
 * Works a job through to clean regions. It is a function of the job, the fonts and the tolerance: nothing is stored in
 * the job, and equal input gives equal output. Results are kept by content, so that preparing again after an edit costs
 * only what the edit touched; elements that do not stand on each other are worked through side by side. Safe for use by
 * several threads, each with a job of its own: hand in a copy of a job that may change meanwhile.
 */
public final class JobPreparer {

	/** The id of the finding that pen lettering has an operation of the blade. */
	public static final String PEN_LETTERING_CUT = "pen-lettering-cut";

	/** The id of the finding that a picture is to be worked whose edge is not to be found. */
	public static final String PICTURE_WORKED = "picture-worked";

	private final ElementSteps steps;

	public JobPreparer(FontLibrary fonts) {
		steps = new ElementSteps(fonts);
	}

	/**
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public PreparedJob prepare(Job job, Tolerance tolerance, Monitor monitor) {
		return new Run(tolerance, monitor).prepare(job, Jobs.elements(job));
	}

	/**
	 * As {@link #prepare}, but mats and all else that follows other elements, which take longest, are missing from their
	 * layers.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public PreparedJob prepareWithoutMats(Job job, Tolerance tolerance, Monitor monitor) {
		return new Run(tolerance, monitor).prepare(job,
				Jobs.elements(job).stream().filter(element -> !Jobs.isFollower(element)).toList());
	}

	/**
	 * Where a caret stands in a wording while it is typed: on the baseline before each character (UTF-16) and after the
	 * last one, in mm of the wording's own frame, turned as the line is there. Empty if the wording's font is missing.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public List<CaretPlace> carets(Wording wording, Tolerance tolerance, Monitor monitor) {
		return steps.carets(wording, tolerance, monitor);
	}

	/**
	 * Where the letters of a wording stand, in the order of the text; blanks are not among them. Empty if the wording's
	 * font is missing.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public List<LetterPlace> letters(Wording wording, Tolerance tolerance, Monitor monitor) {
		return steps.letters(wording, tolerance, monitor);
	}

	/**
	 * What holds a wording together, in mm of its own frame. Nothing if the wording's font is missing.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public Bridgework bridgework(Wording wording, Tolerance tolerance, Monitor monitor) {
		return steps.bridgework(wording, tolerance, monitor);
	}

	/**
	 * Whether the letters of a wording can be cut as they were prepared, at their size and with all that is done to them;
	 * places are in the job's frame. Empty for what is no wording, is not cut, or has nothing to cut.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public Optional<Fitness> fitness(PreparedElement element, Limits limits, Tolerance tolerance, Monitor monitor) {
		if (!(element.element() instanceof Wording wording) || !element.has(OperationKind.CUT)
				|| element.region().isEmpty() || !(wording.getHeight() > 0)) {
			return Optional.empty();
		}
		Transform placed = transform(wording);
		double height = wording.getHeight() * Math.sqrt(Math.abs(placed.determinant()));
		List<Outline> letters = steps.letterOutlines(wording, tolerance, monitor).stream()
				.map(outline -> outline.transformed(placed)).toList();
		return Optional.of(FitnessMeasures.of(element.region(), letters, height, limits, tolerance, monitor));
	}

	private final class Run {

		private final Tolerance tolerance;
		private final Monitor monitor;
		private final Map<Element, PlacedShape> done = new HashMap<>();
		private final Set<Element> underway = new HashSet<>();

		Run(Tolerance tolerance, Monitor monitor) {
			this.tolerance = tolerance;
			this.monitor = monitor;
		}

		PreparedJob prepare(Job job, List<Element> wanted) {
			steps.expect(wanted.size());
			work(wanted);
			Set<Element> all = new HashSet<>(wanted);
			Set<Element> parts = Jobs.parts(job);
			List<PreparedLayer> layers = new ArrayList<>();
			for (Layer layer : job.getLayers()) {
				List<PreparedElement> elements = new ArrayList<>();
				for (Element element : layer.getElements()) {
					if (all.contains(element)) {
						elements.add(prepared(element, parts.contains(element)));
					}
				}
				layers.add(new PreparedLayer(layer, elements));
			}
			return new PreparedJob(job, layers);
		}

		/** In waves, each of what stands on the waves before it; what stands on itself is in none. */
		private void work(List<Element> elements) {
			List<Element> waiting = elements;
			for (List<Element> wave = ready(waiting); !wave.isEmpty(); wave = ready(waiting)) {
				List<PlacedShape> made = wave.parallelStream().map(this::made).toList();
				for (int i = 0; i < made.size(); i++) {
					done.put(wave.get(i), made.get(i));
				}
				waiting = waiting.stream().filter(element -> !done.containsKey(element)).toList();
			}
		}

		private List<Element> ready(List<Element> waiting) {
			return waiting.stream()
					.filter(element -> done.keySet().containsAll(Jobs.sources(element))).toList();
		}

		private PreparedElement prepared(Element element, boolean part) {
			PlacedShape placed = placed(element);
			List<Finding> findings = new ArrayList<>(placed.findings(element.getId()));
			PreparedElement prepared = new PreparedElement(element, placed.region(), placed.lines(),
					placed.shape().uncleaned().placed(placed.transform()), part, xHeight(placed), findings);
			if (part || prepared.operations().size() == element.getOperations().size()) {
				return prepared;
			}
			findings.add(prepared.isWithoutEdge()
					? Finding.plain(PICTURE_WORKED, Severity.BLOCKING, element.getId(), prepared.bounds().centre(),
							Messages.JobPreparer_pictureWorked, Messages.JobPreparer_pictureWorkedCure)
					: Finding.plain(PEN_LETTERING_CUT, Severity.BLOCKING, element.getId(), prepared.bounds().centre(),
							Messages.JobPreparer_penCut,
							Messages.JobPreparer_penCutCure));
			return new PreparedElement(element, prepared.region(), prepared.lines(), prepared.uncleaned(), part,
					prepared.xHeight(), findings);
		}

		private static OptionalDouble xHeight(PlacedShape placed) {
			OptionalDouble own = placed.shape().xHeight();
			return own.isEmpty() ? own
					: OptionalDouble.of(own.getAsDouble() * Math.sqrt(Math.abs(placed.transform().determinant())));
		}

		private PlacedShape placed(Element element) {
			PlacedShape known = done.get(element);
			if (known != null) {
				return known;
			}
			underway.add(element);
			PlacedShape placed = made(element);
			underway.remove(element);
			done.put(element, placed);
			return placed;
		}

		private PlacedShape made(Element element) {
			monitor.check();
			return Jobs.isFollower(element) ? following(element)
					: steps.placed(steps.shape(element, tolerance, monitor), transform(element));
		}

		private PlacedShape following(Element follower) {
			List<PlacedShape> before = new ArrayList<>();
			for (Element element : Jobs.sources(follower)) {
				if (underway.contains(element)) {
					return steps.followingItself(follower, transform(follower));
				}
				before.add(placed(element));
			}
			return steps.following(follower, before, tolerance, monitor, transform(follower));
		}
	}

	private static Transform transform(Element element) {
		Matrix m = element.getTransform();
		return m == null ? Transform.IDENTITY : new Transform(m.a(), m.b(), m.c(), m.d(), m.e(), m.f());
	}
}
