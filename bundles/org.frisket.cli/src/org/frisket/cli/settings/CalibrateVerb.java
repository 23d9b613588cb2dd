package org.frisket.cli.settings;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.line.VerbGroup;
import org.frisket.cli.line.VerbOptions;
import org.frisket.cli.work.Preparation;
import org.frisket.cli.work.Targets;
import org.frisket.geometry.Length;
import org.frisket.geometry.Tolerance;
import org.frisket.material.calibration.Estimate;
import org.frisket.material.calibration.OffsetCalibration;
import org.frisket.material.calibration.OffsetReading;
import org.frisket.material.calibration.OffsetSheet;
import org.frisket.material.calibration.ScaleErrors;
import org.frisket.material.calibration.ScaleReading;
import org.frisket.material.calibration.ScaleSheet;
import org.frisket.material.tools.Blade;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.model.Job;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Sheets to calibrate with, and what was read from them. */
@Command(name = "calibrate", description = "Makes sheets to calibrate with, and works out what was read from them.", subcommands = {
		CalibrateVerb.Scale.class, CalibrateVerb.Offset.class })
final class CalibrateVerb extends VerbGroup {

	private static void write(Job job, List<Path> outputs, PrintWriter err) throws Refusal {
		Targets.of(outputs).write(job, Preparation.of(job, Tolerance.DEFAULT).prepared(), Map.of(), err);
	}

	@Command(name = "scale", description = "A long cross to draw, and how far the axes are off once it was measured.", sortOptions = false)
	static final class Scale implements Callable<Integer> {

		@Option(names = "--cross", paramLabel = "WxH", converter = Conversions.BoxConversion.class, description = "Length of its arms, such as 180x270mm (default as long as the machine allows).")
		private Conversions.Box cross;

		@Option(names = "--machine", paramLabel = "ID", description = "One of the studio's machines.")
		private String machine;

		@Option(names = "--out", paramLabel = "FILE", description = "Writes the cross, by the ending.")
		private List<Path> outputs = List.of();

		@Option(names = "--across", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, description = "Measured from the left end to the right.")
		private Double across;

		@Option(names = "--down", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, description = "Measured from the top end to the bottom.")
		private Double down;

		@Option(names = "--right-top", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, description = "Measured from the right end to the top; with --right-bottom for the skew.")
		private Double rightTop;

		@Option(names = "--right-bottom", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, description = "Measured from the right end to the bottom.")
		private Double rightBottom;

		@Option(names = "--keep", description = "Sets the factors of the machine to what was found.")
		private boolean keep;
		@Option(names = "--error", paramLabel = "LENGTH", defaultValue = "0.1mm", converter = Conversions.PositiveLength.class, description = "Error of one measurement (default ${DEFAULT-VALUE}).")
		private Double error;

		@Mixin
		private VerbOptions verb = new VerbOptions();

		@Override
		public Integer call() throws Refusal {
			verb.chooseStudio();
			try {
				ScaleSheet sheet = cross != null ? new ScaleSheet(cross.width(), cross.height())
						: ScaleSheet.on(SettingsDesk.read(settings -> WorkOptions.machine(settings, machine)));
				PrintWriter out = verb.out();
				if (across == null || down == null) {
					if (outputs.isEmpty()) {
						throw new Refusal("say where to write the cross with --out, or what was measured with --across and --down");
					}
					write(sheet.job(), outputs, verb.err());
					out.println("a cross of " + Length.text(sheet.width(), 1) + " by " + Length.text(sheet.height(), 1));
					return Status.DONE;
				}
				ScaleErrors found = new ScaleReading(across, down, rightTop == null ? 0 : rightTop,
						rightBottom == null ? 0 : rightBottom, error).against(sheet);
				out.println("x: multiply lengths with " + factor(found.correctX(), found.x().error()));
				out.println("y: multiply lengths with " + factor(found.correctY(), found.y().error()));
				if (keep) {
					keep(found);
				}
				out.println(found.skew() == null ? "skew: not measured"
						: "skew: " + SettingsText.plain(found.skew().value()) + "° ± "
								+ SettingsText.plain(found.skew().error()) + "°");
				return Status.DONE;
			} catch (IllegalArgumentException e) {
				throw new Refusal(e);
			}
		}

		private void keep(ScaleErrors found) throws Refusal {
			if (machine == null || machine.equals(Machine.plain().id())) {
				throw new Refusal("--keep: say which machine with --machine");
			}
			SettingsDesk.change(settings -> {
				settings.save(found.correct(WorkOptions.machine(settings, machine)));
				return null;
			});
		}

		private static String factor(double value, double error) {
			return String.format(java.util.Locale.ROOT, "%.5f ± %.5f", value, error);
		}
	}

	@Command(name = "offset", description = "Corners and circles for several blade offsets, and the blade's own once they were read.", sortOptions = false)
	static final class Offset implements Callable<Integer> {

		@Option(names = "--tool", paramLabel = "ID", description = "One of the studio's blades (default a usual one).")
		private String tool;

		@Option(names = "--step", paramLabel = "LENGTH", defaultValue = "0.05mm", converter = Conversions.PositiveLength.class, description = "From cell to cell (default ${DEFAULT-VALUE}).")
		private Double step;

		@Option(names = "--cells", paramLabel = "N", defaultValue = "7", description = "Default ${DEFAULT-VALUE}.")
		private int cells;

		@Option(names = "--out", paramLabel = "FILE", description = "Writes the sheet, by the ending.")
		private List<Path> outputs = List.of();

		@Option(names = "--read", paramLabel = "OFFSET=MISS", description = "What a cell shows, such as 0.3mm=0.05mm: above zero if the corner is overrun, below if it is rounded.")
		private Map<String, String> readings = Map.of();

		@Option(names = "--sizes", description = "The readings are gaps without a sign.")
		private boolean sizes;

		@Option(names = "--keep", description = "Sets the offset of the blade to what was found.")
		private boolean keep;

		@Mixin
		private VerbOptions verb = new VerbOptions();

		@Override
		public Integer call() throws Refusal {
			verb.chooseStudio();
			try {
				return readings.isEmpty() ? make() : work();
			} catch (IllegalArgumentException e) {
				throw new Refusal(e);
			}
		}

		private int make() throws Refusal {
			if (outputs.isEmpty()) {
				throw new Refusal("say where to write the sheet with --out, or what it shows with --read");
			}
			if (cells < 1 || cells > OffsetSheet.MOST) {
				throw new Refusal("--cells: from 1 to " + OffsetSheet.MOST);
			}
			OffsetSheet sheet = OffsetSheet.about(blade(), step, cells);
			write(sheet.job(), outputs, verb.err());
			verb.out().println("cells from the left: " + sheet.offsets() + " mm");
			verb.out().println(sheet.job().getNotes());
			return Status.DONE;
		}

		private Blade blade() throws Refusal {
			if (tool == null) {
				return (Blade) ToolOptions.usual(ToolKind.BLADE);
			}
			return SettingsDesk.read(settings -> settings.tool(tool)).filter(Blade.class::isInstance)
					.map(Blade.class::cast)
					.orElseThrow(() -> new Refusal("--tool: the studio has no blade “" + tool + "”"));
		}

		private int work() throws Refusal {
			List<OffsetReading> read = new ArrayList<>();
			readings.forEach((offset, miss) -> read.add(new OffsetReading(Length.parse(offset), Length.parse(miss))));
			Estimate found = sizes ? OffsetCalibration.ofSizes(read) : OffsetCalibration.of(read);
			verb.out().println(
					"offset " + Length.text(found.value(), 3) + " ± " + Length.text(found.error(), 3));
			if (keep) {
				if (tool == null) {
					throw new Refusal("--keep: say which blade with --tool");
				}
				Blade blade = blade().withOffset(Math.rint(found.value() * 1000) / 1000);
				SettingsDesk.change(settings -> {
					settings.save(blade);
					return null;
				});
			}
			return Status.DONE;
		}
	}
}
