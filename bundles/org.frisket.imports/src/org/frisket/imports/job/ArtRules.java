package org.frisket.imports.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.geometry.repair.RepairCourse;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedShape;
import org.frisket.model.OperationKind;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.prepare.repair.RepairSteps;

/**
 * What becomes of art in a job.
 *
 * @param areas    what is done with areas
 * @param lines    what is done along lines that bound no area
 * @param pictures what is done with pictures besides printing them: {@code PRINT} for nothing, else along the edge of their
 *                 art
 * @param course   the repairs that areas and lines go through; empty for none
 * @param onAreas  the same for lines that lie on areas and bound none by themselves
 */
public record ArtRules(OperationKind areas, OperationKind lines, OperationKind pictures, Optional<RepairCourse> course,
		Optional<RepairCourse> onAreas) {

	private static final String YES = "yes";
	private static final String NO = "no";

	private static final Option LINES = Option.choice("lines", Messages.ArtRules_lines, "draw", "cut", "kiss-cut",
			"crease", "perforate");
	private static final Option AREAS = Option.choice("areas", Messages.ArtRules_areas, "cut", "kiss-cut", "crease",
			"perforate", "draw", "print");
	private static final Option PICTURES = Option.choice("pictures", Messages.ArtRules_pictures, "print", "cut", "kiss-cut");
	private static final Option REPAIR = Option.choice("repair", Messages.ArtRules_repair, YES, NO);

	/** The option of the repairs that says whether closed lines become areas; and its value for those that do not. */
	private static final String CLOSED = "closed";
	private static final String STAY_LINES = "lines";

	/** In the order in which a form shows them. */
	public static List<Option> options() {
		return List.of(LINES, AREAS, PICTURES, REPAIR);
	}

	/** Those of them that make a difference to some art; closed lines may become areas. */
	public static List<Option> options(List<ImportedArt> arts) {
		List<ImportedShape> shapes = arts.stream().flatMap(art -> art.layers().stream())
				.flatMap(layer -> layer.shapes().stream()).toList();
		boolean pictures = shapes.stream().anyMatch(ImportedShape.Picture.class::isInstance);
		boolean lines = shapes.stream().anyMatch(ImportedShape.Lines.class::isInstance);
		boolean areas = lines || shapes.stream().anyMatch(ImportedShape.Area.class::isInstance);
		return options().stream().filter(option -> option == PICTURES ? pictures : option == LINES ? lines : areas).toList();
	}

	/** Lines are drawn, areas are cut, and all is repaired. */
	public static ArtRules usual() throws ContributionException {
		return of(Map.of());
	}

	/** The same without repair. */
	public static Map<String, String> unrepaired() {
		return Map.of(REPAIR.name(), NO);
	}

	/**
	 * @param texts by the name of their option: those of {@link #options()} and of the steps of repair; defaults for what
	 *              is missing
	 * @throws IllegalArgumentException if a text is no value of its option, or there is no such option
	 * @throws ContributionException    if a step of repair fails to be made
	 */
	public static ArtRules of(Map<String, String> texts) throws ContributionException {
		Map<String, String> own = new LinkedHashMap<>(texts);
		own.keySet().retainAll(options().stream().map(Option::name).toList());
		Map<String, String> ofSteps = new LinkedHashMap<>(texts);
		ofSteps.keySet().removeAll(own.keySet());
		OptionValues values = OptionValues.of(options(), own);
		// made even if nothing is repaired, for it tells of options that there are not
		RepairCourse course = RepairSteps.course(ofSteps);
		boolean repairs = values.text(REPAIR).equals(YES);
		return new ArtRules(kind(values.text(AREAS)), kind(values.text(LINES)), kind(values.text(PICTURES)),
				repairs ? Optional.of(course) : Optional.empty(),
				repairs ? Optional.of(stayingLines(ofSteps, course)) : Optional.empty());
	}

	private static RepairCourse stayingLines(Map<String, String> ofSteps, RepairCourse course)
			throws ContributionException {
		Map<String, String> staying = new LinkedHashMap<>(ofSteps);
		staying.put(CLOSED, STAY_LINES);
		try {
			return RepairSteps.course(staying);
		} catch (IllegalArgumentException e) {
			// the step that has the option was taken away, and then nothing makes areas of lines
			return course;
		}
	}

	private static OperationKind kind(String word) {
		return OperationKind.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
	}
}
