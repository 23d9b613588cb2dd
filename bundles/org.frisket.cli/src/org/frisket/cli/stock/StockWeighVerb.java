package org.frisket.cli.stock;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Json;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.material.sizes.Format;
import org.frisket.material.sizes.Formats;
import org.frisket.material.weights.Grade;
import org.frisket.material.weights.GradeMatch;
import org.frisket.material.weights.Mass;
import org.frisket.material.weights.MeasureException;
import org.frisket.material.weights.Measures;
import org.frisket.material.weights.Pack;
import org.frisket.material.weights.Reading;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** From a scale to the grammage and the grade. */
@Command(name = "weigh", description = "Tells the grammage of weighed sheets, and which grades come near.", sortOptions = false)
final class StockWeighVerb implements Callable<Integer> {

	private static final int NEAREST = 5;

	@Spec
	private CommandSpec spec;

	@Option(names = "--size", required = true, paramLabel = "SIZE", description = "Of a sheet, such as 12x12in, 210x297mm or A4.")
	private String size;

	@Option(names = "--sheets", paramLabel = "N", defaultValue = "1", description = "How many are on the scale (default ${DEFAULT-VALUE}); more make it surer.")
	private int sheets;

	@Option(names = "--mass", required = true, paramLabel = "MASS", description = "What the scale shows, to its last digit, such as 163.3g or 5.76oz.")
	private String mass;

	@Option(names = "--says", paramLabel = "WEIGHT", description = "What the pack says, such as \"65 lb\".")
	private String says;

	@Option(names = "--json", description = "Writes JSON for machines; g/m² and lb.")
	private boolean json;

	@Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	@Override
	public Integer call() throws Refusal {
		PrintWriter out = spec.commandLine().getOut();
		try {
			if (Formats.parse(size) instanceof Format.Roll) {
				throw new Refusal("--size: a roll cannot be weighed; cut a sheet off it and say how large that is, such as 300x400mm");
			}
			Format.Sheet sheet = Formats.sheet(size);
			Mass shown = Mass.parse(mass);
			BigDecimal grammage = new Pack(sheet.width(), sheet.height(), sheets).grammage(shown);
			List<GradeMatch> matches = matches(grammage, shown.uncertainty());
			if (json) {
				out.println(Json.text(answer(grammage, shown, matches)));
			} else {
				print(out, grammage, shown, matches);
			}
		} catch (MeasureException e) {
			throw new Refusal(e);
		}
		return Status.DONE;
	}

	private List<GradeMatch> matches(BigDecimal grammage, double uncertainty) throws Refusal {
		if (says == null) {
			return GradeMatch.ofUsual(grammage, uncertainty).stream().limit(NEAREST).toList();
		}
		Reading reading = Reading.parse(says);
		if (reading instanceof Reading.Pounds pounds) {
			return GradeMatch.ofLabel(pounds.value(), grammage, uncertainty);
		}
		if (reading instanceof Reading.Basis basis) {
			return GradeMatch.ofLabel(basis.weight().pounds(), grammage, uncertainty);
		}
		throw new Refusal("--says: “" + says + "” has no pounds whose grade could be found");
	}

	private static void print(PrintWriter out, BigDecimal grammage, Mass shown, List<GradeMatch> matches) {
		out.printf(Locale.ROOT, "%s g/m² ± %.1f %% by the scale%n", Measures.text(grammage, 2), 100 * shown.uncertainty());
		for (GradeMatch match : matches) {
			out.printf(Locale.ROOT, "  %-16s %8s g/m²  %+6.1f %%  %s%n", match.weight(),
					Measures.text(match.weight().grammage(), 2), 100 * match.deviation(), word(match.sureness()));
		}
		out.println("makes stray from what they say by about 2 %: common practice, no source");
	}

	private static String word(GradeMatch.Sureness sureness) {
		return switch (sureness) {
		case SURE -> "surely";
		case LIKELY -> "likely";
		case UNSURE -> "possibly; others come as near";
		case NO -> "no";
		};
	}

	private static JsonObject answer(BigDecimal grammage, Mass shown, List<GradeMatch> matches) {
		JsonObject object = new JsonObject();
		object.addProperty("grammage", Measures.rounded(grammage, StockJson.DECIMALS));
		object.addProperty("uncertainty", shown.uncertainty());
		JsonObject grades = new JsonObject();
		for (Grade grade : Grade.values()) {
			grades.addProperty(grade.word(), Measures.rounded(grade.pounds(grammage), StockJson.DECIMALS));
		}
		object.add("grades", grades);
		JsonArray nearest = new JsonArray();
		for (GradeMatch match : matches) {
			JsonObject each = new JsonObject();
			each.addProperty("pounds", match.weight().pounds());
			each.addProperty("grade", match.weight().grade().word());
			each.addProperty("grammage", Measures.rounded(match.weight().grammage(), StockJson.DECIMALS));
			each.addProperty("deviation", match.deviation());
			each.addProperty("share", match.share());
			each.addProperty("sureness", match.sureness().name().toLowerCase(Locale.ROOT));
			nearest.add(each);
		}
		object.add("nearest", nearest);
		return object;
	}
}
