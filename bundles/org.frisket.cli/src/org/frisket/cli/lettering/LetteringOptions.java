package org.frisket.cli.lettering;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.geometry.Length;
import org.frisket.model.Alignment;
import org.frisket.model.Bar;
import org.frisket.model.BarKind;
import org.frisket.model.Bridge;
import org.frisket.model.BridgeAngle;
import org.frisket.model.Flow;
import org.frisket.model.FrisketFactory;
import org.frisket.model.IslandBridges;
import org.frisket.model.PenStyle;
import org.frisket.model.Wording;
import org.frisket.typography.FeatureList;
import org.frisket.typography.FontFace;
import org.frisket.typography.face.Axis;
import org.frisket.typography.face.AxisSettings;

import picocli.CommandLine.Option;

/** How a wording is set, held together and worked. */
public final class LetteringOptions {

	/** Overlap in mm of a bar and the letters that stand on it, as that of joined letters. */
	private static final double HOLD = 0.3;

	@Option(names = "--features", paramLabel = "TAGS", description = "OpenType features, such as \"smcp,-kern,ss01=2\".")
	private String features = "";

	@Option(names = "--axis", paramLabel = "TAG=VALUE", description = "An axis of a variable font, such as wght=700; may be given several times.")
	private List<String> axes = List.of();

	@Option(names = "--tracking", paramLabel = "LENGTH", converter = Conversions.AnyLength.class, description = "Added after every letter.")
	private Double tracking;

	@Option(names = "--word-space", paramLabel = "LENGTH", converter = Conversions.AnyLength.class, description = "Added to every blank.")
	private Double wordSpace;

	@Option(names = "--line-space", paramLabel = "LENGTH|FACTOR", description = "From baseline to baseline, or as a multiple of the height (default 1.6).")
	private String lineSpace;

	@Option(names = "--measure", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, //
			description = "Width at which lines are broken and to which they are aligned.")
	private Double measure;

	@Option(names = "--stacked", description = "Sets letter under letter.")
	private boolean stacked;

	@Option(names = "--arc", paramLabel = "RADIUS", converter = Conversions.PositiveLength.class, description = "Sets on a circle of this radius.")
	private Double arc;

	@Option(names = "--inside", description = "With --arc: within the circle instead of outside.")
	private boolean inside;

	@Option(names = "--fit", paramLabel = "WxH", converter = Conversions.BoxConversion.class, description = "As high as this box takes it, such as 100x40mm.")
	private Conversions.Box fit;

	@Option(names = "--embolden", paramLabel = "LENGTH", converter = Conversions.Distance.class, description = "Moves the edge of every letter outwards.")
	private Double embolden;

	@Option(names = "--tie", paramLabel = "WIDTH", converter = Conversions.PositiveLength.class, description = "Ties dots and accents to their letters with bars of this width.")
	private Double tie;

	@Option(names = "--underline", paramLabel = "THICKNESS", converter = Conversions.PositiveLength.class, //
			description = "A bar of this thickness that the letters of each line stand on.")
	private Double underline;

	@Option(names = "--stencil", paramLabel = "WIDTH", converter = Conversions.PositiveLength.class, description = "Bridges of this width hold the insides of letters.")
	private Double stencil;

	@Option(names = "--bridge", paramLabel = "LETTERS[=WIDTH]", split = ",", converter = Conversions.BridgeConversion.class, //
			description = "A bridge between two letters where the gap is narrowest, such as 1-2=1.5mm for the first and the second; the same number twice ties two parts of a letter. Width default 1mm. Several parted by commas.")
	private List<Conversions.BridgeChoice> bridges = List.of();

	@Option(names = "--islands", paramLabel = "LETTER=COUNT", split = ",", converter = Conversions.IslandConversion.class, //
			description = "With --stencil: how many bridges hold the insides of a letter, such as 3=1, or at which angles, such as 3=@45@225 (degrees clockwise from its baseline); 0 lets them fall out. Several parted by commas.")
	private List<Conversions.IslandChoice> islands = List.of();

	@Option(names = "--centreline", description = "Draws the middle of the strokes with the pen.")
	private boolean centreline;

	@Option(names = "--hatch", paramLabel = "SPACING", converter = Conversions.PositiveLength.class, description = "Draws outlines and hatching with the pen.")
	private Double hatch;

	/** Refuses what cannot be read, and what does not go together. */
	public void check(FontFace face) throws Refusal {
		require("--features", () -> FeatureList.parse(features));
		require("--axis", this::settings);
		requireAxes(face);
		if (lineSpace != null) {
			require("--line-space", () -> lineSpacing(1));
		}
		if (inside && arc == null) {
			throw new Refusal("--inside: there is no circle; give --arc too");
		}
		if (stacked && arc != null) {
			throw new Refusal("--stacked: not together with --arc");
		}
		if (fit != null && (stacked || arc != null)) {
			throw new Refusal("--fit: only for straight lines");
		}
		if (underline != null && stacked) {
			throw new Refusal("--underline: not together with --stacked");
		}
		if (!islands.isEmpty() && stencil == null) {
			throw new Refusal("--islands: there are no bridges; give --stencil too");
		}
		if (centreline && hatch != null) {
			throw new Refusal("--centreline: not together with --hatch");
		}
	}

	private static void require(String option, Supplier<?> reading) throws Refusal {
		try {
			reading.get();
		} catch (IllegalArgumentException e) {
			throw new Refusal(option + ": " + e.getMessage());
		}
	}

	private void requireAxes(FontFace face) throws Refusal {
		String has = face.axes().isEmpty() ? "it is no variable font"
				: "it has " + face.axes().stream().map(Axis::tag).collect(Collectors.joining(", "));
		for (String tag : settings().values().keySet()) {
			if (face.axes().stream().noneMatch(axis -> axis.tag().equals(tag))) {
				throw new Refusal("--axis: “" + face.fullName() + "” has no axis " + tag + "; " + has);
			}
		}
	}

	public OptionalDouble boxHeight() {
		return fit == null ? OptionalDouble.empty() : OptionalDouble.of(fit.height());
	}

	public Alignment usualAlignment() {
		return arc == null ? Alignment.LEFT : Alignment.CENTRE;
	}

	private AxisSettings settings() {
		return AxisSettings.parse(String.join(",", axes));
	}

	/** As a multiple of the height. */
	private double lineSpacing(double height) {
		boolean factor = lineSpace.matches("\\d{1,4}(\\.\\d{1,9})?");
		double value = factor ? Double.parseDouble(lineSpace) : Length.parsePositive(lineSpace) / height;
		if (!(value > 0)) {
			throw new IllegalArgumentException("“" + lineSpace + "” is not above zero");
		}
		return value;
	}

	public void decide(Wording wording) {
		wording.setFeatures(FeatureList.parse(features).isEmpty() ? null : FeatureList.parse(features).toString());
		wording.setAxes(axes.isEmpty() ? null : settings().toString());
		wording.setTracking(or(tracking, wording.getTracking()));
		wording.setWordSpacing(or(wordSpace, 0));
		wording.setMeasure(or(measure, 0));
		if (lineSpace != null) {
			wording.setLineSpacing(lineSpacing(wording.getHeight()));
		}
		if (arc != null) {
			wording.setFlow(Flow.ARC);
			wording.setArcRadius(arc);
			wording.setArcInside(inside);
		} else if (stacked) {
			wording.setFlow(Flow.STACKED);
		}
		if (fit != null) {
			wording.setBoxWidth(fit.width());
			wording.setBoxHeight(fit.height());
		}
		wording.setEmbolden(or(embolden, 0));
		hold(wording);
		wording.setStencil(or(stencil, 0));
		bridge(wording);
		if (centreline) {
			wording.setPenStyle(PenStyle.CENTRELINE);
		} else if (hatch != null) {
			wording.setPenStyle(PenStyle.HATCHED);
			wording.setHatchSpacing(hatch);
		}
	}

	/** Counted as people count letters: without blanks and line ends. */
	public void checkLetters(String wording) throws Refusal {
		int letters = indices(wording).size();
		for (Conversions.BridgeChoice bridge : bridges) {
			requireLetter("--bridge", Math.max(bridge.one(), bridge.other()), letters);
		}
		for (Conversions.IslandChoice island : islands) {
			requireLetter("--islands", island.letter(), letters);
		}
	}

	private static void requireLetter(String option, int letter, int letters) throws Refusal {
		if (letter > letters) {
			throw new Refusal(option + ": there is no letter " + letter + "; the wording has " + letters);
		}
	}

	private static List<Integer> indices(String wording) {
		List<Integer> indices = new ArrayList<>();
		for (int i = 0; i < wording.length(); i += Character.charCount(wording.codePointAt(i))) {
			if (!Character.isWhitespace(wording.codePointAt(i))) {
				indices.add(i);
			}
		}
		return indices;
	}

	private void bridge(Wording wording) {
		List<Integer> indices = indices(wording.getText());
		for (Conversions.BridgeChoice choice : bridges) {
			Bridge bridge = FrisketFactory.INSTANCE.createBridge();
			bridge.setOne(indices.get(choice.one() - 1));
			bridge.setOther(indices.get(choice.other() - 1));
			bridge.setWidth(choice.width());
			wording.getBridges().add(bridge);
		}
		for (Conversions.IslandChoice choice : islands) {
			IslandBridges held = FrisketFactory.INSTANCE.createIslandBridges();
			held.setIndex(indices.get(choice.letter() - 1));
			held.setCount(choice.count());
			for (double angle : choice.angles()) {
				BridgeAngle at = FrisketFactory.INSTANCE.createBridgeAngle();
				at.setAngle(angle);
				held.getAt().add(at);
			}
			wording.getIslands().add(held);
		}
	}

	private void hold(Wording wording) {
		if (tie != null) {
			wording.setTieMarks(true);
			wording.setTieWidth(tie);
		}
		if (underline != null) {
			Bar bar = FrisketFactory.INSTANCE.createBar();
			bar.setKind(BarKind.UNDERLINE);
			bar.setThickness(underline);
			bar.setOffset(-Math.min(HOLD + lift(wording), underline / 2));
			wording.getBars().add(bar);
		}
	}

	/** How far the feet of a broad letter stand off the circle at their corners. */
	private double lift(Wording wording) {
		double half = wording.getHeight() / 2;
		return arc == null ? 0 : half * half / (2 * arc);
	}

	private static double or(Double given, double otherwise) {
		return given == null ? otherwise : given;
	}
}
