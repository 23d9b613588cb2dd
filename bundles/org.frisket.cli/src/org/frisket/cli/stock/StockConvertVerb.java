package org.frisket.cli.stock;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Json;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.material.shelf.PackStudy;
import org.frisket.material.weights.Grade;
import org.frisket.material.weights.MeasureException;
import org.frisket.material.weights.Measures;
import org.frisket.material.weights.Reading;
import org.frisket.material.weights.Thickness;

import com.google.gson.JsonNull;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What stands on a pack, in all the other units. */
@Command(name = "convert", description = "Tells a weight in g/m² and in every grade, or a caliper in mm, points and µm.", sortOptions = false)
final class StockConvertVerb implements Callable<Integer> {

	@Spec
	private CommandSpec spec;

	@Parameters(arity = "1..*", paramLabel = "WEIGHT", description = "Such as \"65 lb cover\", \"65 lb\", \"216 g/m2\", \"250gsm\", \"10 pt\" or \"0.3 mm\".")
	private List<String> words;

	@Option(names = "--json", description = "Writes JSON for machines; g/m², lb and mm.")
	private boolean json;

	@Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	@Override
	public Integer call() throws Refusal {
		JsonObject answer = new JsonObject();
		PrintWriter out = json ? new PrintWriter(PrintWriter.nullWriter()) : spec.commandLine().getOut();
		try {
			Reading reading = Reading.parse(String.join(" ", words));
			if (reading instanceof Reading.Grammage grammage) {
				weight(grammage.value(), out, answer);
			} else if (reading instanceof Reading.Basis basis) {
				weight(basis.weight().grammage(), out, answer);
			} else if (reading instanceof Reading.Pounds pounds) {
				pounds(pounds.value(), out, answer);
			} else if (reading instanceof Reading.Caliper caliper) {
				caliper(caliper.thickness(), out, answer);
			}
		} catch (MeasureException e) {
			throw new Refusal(e);
		}
		if (json) {
			spec.commandLine().getOut().println(Json.text(answer));
		}
		return Status.DONE;
	}

	private static void weight(BigDecimal grammage, PrintWriter out, JsonObject answer) {
		out.println(Measures.text(grammage, 2) + " g/m²");
		answer.addProperty("grammage", Measures.rounded(grammage, StockJson.DECIMALS));
		JsonObject grades = new JsonObject();
		for (Grade grade : Grade.values()) {
			out.printf("  %8s lb %s%n", Measures.text(grade.pounds(grammage), 2), name(grade));
			grades.addProperty(grade.word(), Measures.rounded(grade.pounds(grammage), StockJson.DECIMALS));
		}
		answer.add("grades", grades);
	}

	private static String name(Grade grade) {
		return grade == Grade.BOARD ? "per 1000 ft² of board" : grade.word();
	}

	private static void pounds(BigDecimal pounds, PrintWriter out, JsonObject answer) {
		out.println(pounds.toPlainString() + " lb is another paper in each grade:");
		answer.add("grammage", JsonNull.INSTANCE);
		answer.addProperty("pounds", pounds);
		JsonObject candidates = new JsonObject();
		for (Grade grade : Grade.values()) {
			BigDecimal grammage = grade.grammage(pounds);
			if (grammage.compareTo(Measures.HEAVIEST) <= 0) {
				out.printf("  %8s g/m² as %s%n", Measures.text(grammage, 2), name(grade));
				candidates.addProperty(grade.word(), Measures.rounded(grammage, StockJson.DECIMALS));
			}
		}
		answer.add("candidates", candidates);
		String weigh = "weigh some sheets: frisket stock weigh --size 12x12in --sheets 10 --mass 163.3g --says \"%s lb\""
				.formatted(pounds.toPlainString());
		String measure = "or measure a stack: frisket stock measure --stack 12.5mm --sheets 50";
		out.println("To find out which, " + weigh);
		out.println(measure);
		answer.addProperty("findOut", weigh + "; " + measure);
	}

	private static void caliper(Thickness caliper, PrintWriter out, JsonObject answer) {
		out.printf("%s mm = %s points (mils) = %s µm%n", Measures.text(caliper.mm(), 4), Measures.text(caliper.mils(), 3),
				Measures.text(caliper.micrometres(), 2));
		StockJson.caliper(answer, caliper);
		answer.add("grammage", JsonNull.INSTANCE);
		JsonObject estimates = new JsonObject();
		for (PackStudy.Estimate estimate : PackStudy.estimates(caliper)) {
			String finish = estimate.finish().name().toLowerCase(Locale.ROOT);
			out.printf("  perhaps %s g/m² if it is %s (%s cm³/g)%n", Measures.text(estimate.grammage(), 0), finish,
					estimate.bulk().value());
			estimates.addProperty(finish, Measures.rounded(estimate.grammage(), 1));
		}
		out.println("A caliper never tells the weight: these are estimates; a scale tells it.");
		answer.add("estimates", estimates);
	}
}
