package org.frisket.cli.stock;

import java.util.List;
import java.util.Locale;

import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.material.Price;
import org.frisket.material.StockBuilder;
import org.frisket.material.StockField;
import org.frisket.material.weights.Reading;

import picocli.CommandLine.Option;

/** What can be said of a stock on the command line. */
final class StockOptions {

	@Option(names = "--name", paramLabel = "T", description = "By which people know it.")
	private String name;

	@Option(names = "--description", paramLabel = "T", description = "What it is.")
	private String description;

	@Option(names = "--family", paramLabel = "FAMILY", description = "card, paper, label, film, fabric, board, foam or other.")
	private String family;

	@Option(names = "--weight", paramLabel = "WEIGHT", description = "As the pack says, such as \"80 lb cover\" or 216g/m2; may be given twice for both.")
	private List<String> weights = List.of();

	@Option(names = "--caliper", paramLabel = "LENGTH", description = "Measured, such as 0.3mm, 12mil or 10pt.")
	private String caliper;

	@Option(names = "--estimated", description = "The caliper is an estimate.")
	private boolean estimated;

	@Option(names = "--colour", paramLabel = "T", description = "Its colour.")
	private String colour;

	@Option(names = "--finish", paramLabel = "FINISH", description = "coated, smooth, textured, metallic, glitter or adhesive.")
	private String finish;

	@Option(names = "--grain", paramLabel = "GRAIN", description = "long or short, as the fibres lie; none in films.")
	private String grain;

	@Option(names = "--size", paramLabel = "SIZE", description = "A size it comes in, such as A4, 12x12in or \"roll 610mm\"; may be given several times.")
	private List<String> sizes = List.of();

	@Option(names = "--price", paramLabel = "PRICE", description = "Of a sheet, such as \"0.45 EUR\".")
	private String price;

	@Option(names = "--on-hand", paramLabel = "N", description = "Sheets on hand.")
	private String onHand;

	@Option(names = "--low-water", paramLabel = "N", description = "The number at which it is time to order.")
	private String lowWater;

	@Option(names = "--abrasion", paramLabel = "N", description = "How many times as fast as plain card it wears a blade.")
	private String abrasion;

	@Option(names = "--notes", paramLabel = "T", description = "Anything else; \\n begins a new line.")
	private String notes;

	/** Sets what was given. @throws IllegalArgumentException if something is no value */
	void apply(StockBuilder stock) throws Refusal {
		set(StockField.NAME, name, stock);
		set(StockField.DESCRIPTION, description, stock);
		set(StockField.FAMILY, family, stock);
		weights(stock);
		caliper(stock);
		set(StockField.COLOUR, colour, stock);
		set(StockField.FINISH, finish, stock);
		set(StockField.GRAIN, grain, stock);
		set(StockField.SIZES, sizes.isEmpty() ? null : String.join("|", sizes), stock);
		price(stock);
		set(StockField.ON_HAND, onHand, stock);
		set(StockField.LOW_WATER, lowWater, stock);
		set(StockField.ABRASION, abrasion, stock);
		set(StockField.NOTES, notes == null ? null : Conversions.lines(notes), stock);
	}

	/** An empty text takes the value away where that is possible. */
	private static void set(StockField field, String value, StockBuilder stock) {
		if (value == null) {
			return;
		}
		if (!value.isBlank()) {
			field.set(stock, value);
			return;
		}
		switch (field) {
		case DESCRIPTION -> stock.description("");
		case COLOUR -> stock.colour("");
		case NOTES -> stock.notes("");
		default -> throw new IllegalArgumentException(field.word() + ": nothing is given");
		}
	}

	/** What the pack says now takes the place of all that it said before. */
	private void weights(StockBuilder stock) throws Refusal {
		if (weights.isEmpty()) {
			return;
		}
		stock.grammage(null).basisWeight(null);
		for (String weight : weights) {
			Reading reading = Reading.parse(weight);
			if (reading instanceof Reading.Grammage grammage) {
				stock.grammage(grammage.value());
			} else if (reading instanceof Reading.Basis basis) {
				stock.basisWeight(basis.weight());
			} else {
				throw new Refusal("--weight: “" + weight + "” is no weight; pounds need their grade, see frisket stock convert");
			}
		}
	}

	private void caliper(StockBuilder stock) throws Refusal {
		if (caliper == null) {
			return;
		}
		if (!(Reading.parse(caliper) instanceof Reading.Caliper read)) {
			throw new Refusal("--caliper: “" + caliper + "” is no caliper; write it like 0.3mm, 12mil or 10pt");
		}
		stock.caliper(read.thickness());
		StockField.CALIPER_SOURCE.set(stock, estimated ? "estimated" : "measured");
	}

	private void price(StockBuilder stock) throws Refusal {
		if (price == null) {
			return;
		}
		String[] parts = price.strip().split("\\s+");
		if (parts.length != 2) {
			throw new Refusal("--price: “" + price + "” has no currency; write it like \"0.45 EUR\"");
		}
		StockField.PRICE.set(stock, parts[0]);
		stock.currency(Price.currency(parts[1].toUpperCase(Locale.ROOT)));
	}
}
