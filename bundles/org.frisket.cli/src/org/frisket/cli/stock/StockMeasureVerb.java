package org.frisket.cli.stock;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Json;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.material.weights.Bulk;
import org.frisket.material.weights.Lengths;
import org.frisket.material.weights.MeasureException;
import org.frisket.material.weights.Measures;
import org.frisket.material.weights.Pack;
import org.frisket.material.weights.Reading;
import org.frisket.material.weights.Thickness;

import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** From a stack to the caliper of a sheet. */
@Command(name = "measure", description = "Tells the caliper of a sheet from a stack of them, and its bulk.", sortOptions = false)
final class StockMeasureVerb implements Callable<Integer> {

	@Spec
	private CommandSpec spec;

	@Option(names = "--stack", required = true, paramLabel = "LENGTH", description = "Height of the stack, lightly pressed together, such as 12.5mm.")
	private String stack;

	@Option(names = "--sheets", required = true, paramLabel = "N", description = "How many sheets are in it.")
	private int sheets;

	@Option(names = "--weight", paramLabel = "WEIGHT", description = "If it is known, such as \"80 lb cover\" or 216gsm, for bulk and density.")
	private String weight;

	@Option(names = "--json", description = "Writes JSON for machines; mm, cm³/g and g/cm³.")
	private boolean json;

	@Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	@Override
	public Integer call() throws Refusal {
		PrintWriter out = spec.commandLine().getOut();
		JsonObject answer = new JsonObject();
		try {
			Thickness caliper = Pack.thickness(Lengths.parse(stack), sheets);
			StockJson.caliper(answer, caliper);
			String text = "%s mm = %s points (mils) = %s µm".formatted(Measures.text(caliper.mm(), 4),
					Measures.text(caliper.mils(), 3), Measures.text(caliper.micrometres(), 2));
			if (weight != null) {
				Bulk bulk = Bulk.of(caliper, grammage());
				answer.addProperty("bulk", Measures.rounded(bulk.value(), StockJson.DECIMALS));
				answer.addProperty("density", Measures.rounded(bulk.density(), StockJson.DECIMALS));
				text += "; bulk %s cm³/g, density %s g/cm³".formatted(Measures.text(bulk.value(), 3),
						Measures.text(bulk.density(), 3));
			}
			out.println(json ? Json.text(answer) : text);
		} catch (MeasureException e) {
			throw new Refusal(e);
		}
		return Status.DONE;
	}

	private BigDecimal grammage() throws Refusal {
		Reading reading = Reading.parse(weight);
		if (reading instanceof Reading.Grammage grammage) {
			return grammage.value();
		}
		if (reading instanceof Reading.Basis basis) {
			return basis.weight().grammage();
		}
		throw new Refusal("--weight: “" + weight + "” is no weight; pounds need their grade");
	}
}
