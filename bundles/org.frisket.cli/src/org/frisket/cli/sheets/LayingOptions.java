package org.frisket.cli.sheets;

import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.impose.Budget;
import org.frisket.impose.Ground;
import org.frisket.impose.Turning;
import org.frisket.model.Laying;
import org.frisket.sheets.imposing.LayingChoices;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** On what parts are laid, and how. What is not given is the usual, or for a job what it was laid with before. */
public final class LayingOptions {

	private static final double USUAL_GAP = 2;
	private static final double USUAL_MARGIN = 5;

	/** One of both. */
	private static final class GroundOption {

		@Option(names = "--roll", paramLabel = "WIDTH", required = true, converter = Conversions.PositiveLength.class, description = "On a roll of this width.")
		private Double roll;

		@Option(names = "--sheet", paramLabel = "WxH", required = true, converter = SheetConversion.class, description = "On sheets of this size, such as 12x12in or A4.")
		private Conversions.Box sheet;
	}

	@ArgGroup(multiplicity = "0..1")
	private GroundOption ground;

	@Option(names = "--sheets", paramLabel = "COUNT", description = "How many sheets there are at most; for jobs, of each stock.")
	private Integer sheets;

	@Option(names = "--gap", paramLabel = "LENGTH", converter = Conversions.AnyLength.class, description = "Between parts (default 2mm; for jobs as they were laid before).")
	private Double gap;

	@Option(names = "--margin", paramLabel = "LENGTH", converter = Conversions.AnyLength.class, description = "Along the edges of a sheet (default 5mm; for jobs as they were laid before).")
	private Double margin;

	@Option(names = "--turn", paramLabel = "none|180|90|free", converter = TurnConversion.class, description = "How parts may be turned; grain allows 180 (default none; for jobs as they were laid before, at first 180).")
	private Turning turning;

	@Option(names = "--seconds", paramLabel = "SECONDS", defaultValue = "60", description = "How long to look for better layouts (default ${DEFAULT-VALUE}).")
	private double seconds;

	@Option(names = "--steps", paramLabel = "COUNT", description = "How many steps to look for, instead of a time: the same layout on every machine.")
	private Long steps;

	@Option(names = "--seed", paramLabel = "NUMBER", description = "Of what is left to chance (default 1; for jobs as they were laid before).")
	private Integer seed;

	double gap() throws Refusal {
		return notBelowZero(gap == null ? USUAL_GAP : gap);
	}

	double margin() throws Refusal {
		return notBelowZero(margin == null ? USUAL_MARGIN : margin);
	}

	private double notBelowZero(double mm) throws Refusal {
		if (mm < 0 || sheets != null && sheets < 1) {
			throw new Refusal("--gap, --margin: no less than 0; --sheets: 1 at least");
		}
		return mm;
	}

	Turning turning() {
		return turning == null ? Turning.NONE : turning;
	}

	int seed() {
		return seed == null ? 1 : seed;
	}

	public Budget budget(int usualSeed) throws Refusal {
		int used = seed == null ? usualSeed : seed;
		try {
			return steps != null ? Budget.steps(steps, used) : Budget.seconds(seconds, used);
		} catch (IllegalArgumentException e) {
			throw new Refusal("--seconds, --steps: no less than 0");
		}
	}

	/** @throws Refusal if neither sheets nor a roll are given */
	Ground ground() throws Refusal {
		if (ground == null) {
			throw new Refusal("say on what: --sheet WxH or --roll WIDTH");
		}
		try {
			return ground.roll != null ? Ground.roll(ground.roll)
					: new Ground(ground.sheet.width(), ground.sheet.height(), sheets == null ? Integer.MAX_VALUE : sheets);
		} catch (IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	/** Those of jobs. @param before how the job was laid last; null if it never was */
	public LayingChoices over(Laying before, boolean apart, boolean byJob) throws Refusal {
		LayingChoices own = LayingChoices.of(before);
		boolean roll = ground == null ? own.roll() : ground.roll != null;
		double width = ground == null ? own.width() : roll ? 0 : ground.sheet.width();
		double height = ground == null ? own.height() : roll ? ground.roll : ground.sheet.height();
		return new LayingChoices(width, height, roll, notBelowZero(gap == null ? own.gap() : gap),
				notBelowZero(margin == null ? own.margin() : margin), turning == null ? own.turning() : turning,
				apart || own.apart(), byJob || own.byJob(), seed == null ? own.seed() : seed, sheets == null ? 0 : sheets);
	}
}
