package org.frisket.ui.bench.internal.picture;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.model.WeedLines;
import org.frisket.model.Wording;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.Placeholder;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedPicture;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.wording.CaretPlace;
import org.frisket.prepare.wording.LetterPlace;

/** Works a job through and makes its picture. Takes its time: not for the UI thread. */
public final class PictureMaker {

	/** A tenth of what a person sees at true size. */
	private static final double FLATNESS = 0.01;
	private static final double HATCH_SPACING = 1.5;

	private final JobPreparer preparer;
	/** The pictures made last: most elements are the same in the next. Only whole maps are put here. */
	private volatile Map<String, Drawn> last = Map.of();
	/** The last one with all its mats. */
	private JobPicture picture = JobPicture.NONE;

	/** A picture and the shape it was made of; not the element, which would keep its whole job. */
	private record Drawn(Region region, List<Contour> lines, ElementPicture picture) {
	}

	public PictureMaker(JobPreparer preparer) {
		this.preparer = preparer;
	}

	/**
	 * The curves of a job, without findings.
	 *
	 * @param job   a copy that nobody changes meanwhile
	 * @param first told what can be seen sooner, if there is anything new in it: all but mats and the like, which take longest
	 *              and are still as they were
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public Stage prepare(Job job, Tolerance tolerance, Monitor monitor, Consumer<JobPicture> first) {
		if (Jobs.elements(job).stream()
				.anyMatch(element -> Jobs.isFollower(element) && last.containsKey(element.getId()))) {
			prepareFirst(job, tolerance, monitor, first);
		}
		PreparedJob prepared = preparer.prepare(job, tolerance, monitor);
		Map<String, Drawn> drawn = drawn(prepared, monitor);
		last = drawn;
		int pieces = prepared.elements().mapToInt(element -> element.region().pieces().size()).sum();
		picture = new JobPicture(pictures(drawn), prepared.findings(), pieces, bounds(drawn, prepared.bounds()), prepared);
		return new Stage(prepared, picture, tolerance);
	}

	private void prepareFirst(Job job, Tolerance tolerance, Monitor monitor, Consumer<JobPicture> first) {
		PreparedJob withoutMats = preparer.prepareWithoutMats(job, tolerance, monitor);
		Map<String, Drawn> anew = drawn(withoutMats, monitor);
		Map<String, Drawn> before = last;
		if (anew.entrySet().stream().allMatch(each -> before.get(each.getKey()) == each.getValue())) {
			return;
		}
		Map<String, Drawn> mixed = new HashMap<>(before);
		mixed.putAll(anew);
		last = mixed;
		first.accept(new JobPicture(pictures(mixed), picture.findings(), picture.pieces(),
				bounds(mixed, picture.bounds().with(withoutMats.bounds())), picture.prepared()));
	}

	private Map<String, Drawn> drawn(PreparedJob prepared, Monitor monitor) {
		Map<String, Drawn> known = last;
		Map<String, Drawn> drawn = new HashMap<>();
		prepared.elements().forEach(element -> {
			monitor.check();
			drawn.put(element.element().getId(), drawn(element, known.get(element.element().getId())));
		});
		return drawn;
	}

	private static Map<String, ElementPicture> pictures(Map<String, Drawn> drawn) {
		Map<String, ElementPicture> pictures = new HashMap<>();
		drawn.forEach((id, each) -> pictures.put(id, each.picture()));
		return pictures;
	}

	private static Bounds bounds(Map<String, Drawn> drawn, Bounds prepared) {
		return drawn.values().stream().map(Drawn::picture).filter(ElementPicture::placeholder).map(ElementPicture::bounds)
				.reduce(prepared, Bounds::with);
	}

	/** Where a caret stands in the wording of this id, in its own frame; empty if there is none. */
	public List<CaretPlace> carets(Job job, String id, Tolerance tolerance, Monitor monitor) {
		return Jobs.element(job, id).filter(Wording.class::isInstance).map(Wording.class::cast)
				.map(wording -> preparer.carets(wording, tolerance, monitor)).orElse(List.of());
	}

	/** Where the letters of the wording of this id stand, in its own frame; empty if there is none. */
	public List<LetterPlace> letters(Job job, String id, Tolerance tolerance, Monitor monitor) {
		return Jobs.element(job, id).filter(Wording.class::isInstance).map(Wording.class::cast)
				.map(wording -> preparer.letters(wording, tolerance, monitor)).orElse(List.of());
	}

	/**
	 * What helps against some findings of a picture, for each of them.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public Map<Finding, List<Cure>> cures(JobPicture picture, List<Finding> findings, LayerLimits limits,
			Tolerance tolerance, Monitor monitor) {
		Trial trial = Makeready.trial(picture.prepared(), preparer, FontLibraries.installed(), limits, tolerance, monitor);
		Map<Finding, List<Cure>> cures = new HashMap<>();
		for (Finding finding : findings) {
			monitor.check();
			cures.put(finding, Makeready.cures(finding, trial));
		}
		return cures;
	}

	/**
	 * Equal shapes at equal places are the same objects, which tells without a look into them; what has no shape may have
	 * a placeholder that changes.
	 */
	private static Drawn drawn(PreparedElement prepared, Drawn before) {
		if (before != null && before.region() == prepared.region() && before.lines() == prepared.lines()
				&& !(prepared.region().isEmpty() && prepared.lines().isEmpty())
				&& before.picture().operations().equals(operations(prepared)) && before.picture().part() == prepared.part()
				&& before.picture().dashes().equals(dashes(prepared)) && PictureRim.isOf(before.picture().rim(), prepared)
				&& before.picture().placement().equals(transform(prepared.element().getTransform()))) {
			return before;
		}
		return new Drawn(prepared.region(), prepared.lines(), picture(prepared));
	}

	private static Set<OperationKind> operations(PreparedElement prepared) {
		// pixels without an edge are never worked, whatever is asked for
		List<Operation> operations = prepared.picture().isPresent() ? prepared.operations()
				: prepared.element().getOperations();
		return operations.stream().map(Operation::getKind).collect(Collectors.toCollection(HashSet::new));
	}

	private static Map<OperationKind, Outline> dashes(PreparedElement prepared) {
		Map<OperationKind, Outline> dashes = new EnumMap<>(OperationKind.class);
		for (Operation operation : prepared.operations()) {
			List<Contour> broken = prepared.dashes(operation);
			if (!broken.isEmpty()) {
				dashes.putIfAbsent(operation.getKind(), new Outline(broken));
			}
		}
		return dashes;
	}

	private static ElementPicture picture(PreparedElement prepared) {
		Outline placeholder = Placeholder.of(prepared);
		if (!placeholder.isEmpty()) {
			return new ElementPicture(placeholder, new FlatCurves(placeholder, FLATNESS), Outline.EMPTY,
					transform(prepared.element().getTransform()), Set.of(), true, false, false, Map.of(), null, null);
		}
		Optional<PreparedPicture> pixels = prepared.picture();
		boolean lost = prepared.region().isEmpty() && pixels.isPresent();
		// without a contour it is still there to be looked at, in its rectangle
		Outline curves = lost ? frame(pixels.get()) : prepared.region().toOutline().plus(new Outline(prepared.lines()));
		Set<OperationKind> operations = operations(prepared);
		if (lost) {
			operations.retainAll(Set.of(OperationKind.PRINT));
		}
		FlatCurves flat = new FlatCurves(curves, FLATNESS);
		Outline hatching = operations.contains(OperationKind.PRINT) ? Hatching.of(flat, HATCH_SPACING) : Outline.EMPTY;
		return new ElementPicture(curves, flat, hatching, transform(prepared.element().getTransform()), operations, false,
				prepared.part(), prepared.element() instanceof WeedLines, dashes(prepared),
				pixels.map(each -> Pixels.of(each, isCutOut(prepared) ? prepared.region() : null)).orElse(null),
				PictureRim.of(prepared));
	}

	private static boolean isCutOut(PreparedElement prepared) {
		return !prepared.isWithoutEdge() && !prepared.region().isEmpty()
				&& (prepared.has(OperationKind.CUT) || prepared.has(OperationKind.KISS_CUT));
	}

	private static Outline frame(PreparedPicture picture) {
		Transform place = picture.place();
		return new Outline(List.of(Contour.polygon(List.of(place.apply(new Point(0, 0)), place.apply(new Point(0, 1)),
				place.apply(new Point(1, 1)), place.apply(new Point(1, 0))))));
	}

	/** A matrix of the model as a map of the plane. */
	public static Transform transform(Matrix m) {
		return m == null ? Transform.IDENTITY : new Transform(m.a(), m.b(), m.c(), m.d(), m.e(), m.f());
	}

	/** Curves that can be shown at once, and that the checks can go on from. */
	public record Stage(PreparedJob prepared, JobPicture picture, Tolerance tolerance) {

		/** The same picture with all findings of makeready. */
		public JobPicture checked(LayerLimits limits, Monitor monitor) {
			return new JobPicture(picture.elements(), Makeready.findings(prepared, limits, tolerance, monitor),
					picture.pieces(), picture.bounds(), prepared);
		}
	}
}
