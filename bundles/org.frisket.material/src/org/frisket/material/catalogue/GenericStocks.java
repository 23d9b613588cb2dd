package org.frisket.material.catalogue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

import org.frisket.material.Finish;
import org.frisket.material.Grain;
import org.frisket.material.Stock;
import org.frisket.material.StockBuilder;
import org.frisket.material.StockFamily;
import org.frisket.material.sizes.Format;
import org.frisket.material.sizes.Formats;
import org.frisket.material.weights.BasisWeight;
import org.frisket.material.weights.Grade;
import org.frisket.material.weights.Thickness;

/**
 * Stock that every studio meets, by whichever maker. Weights are those it is sold by; calipers and how much it wears a
 * blade are common practice, no source, to be replaced by what the studio measures.
 */
public final class GenericStocks implements StockCatalogue {

	private static final String[] SQUARES_AND_LETTER = { "12x12in", "letter" };

	@Override
	public List<Stock> stocks() {
		return List.of(card("card-65lb", "Card 65 lb", "65", Finish.SMOOTH), card("card-80lb", "Card 80 lb", "80", Finish.SMOOTH),
				card("card-80lb-felt", "Felt card 80 lb", "80", Finish.TEXTURED),
				card("card-100lb", "Card 100 lb", "100", Finish.SMOOTH),
				card("card-110lb", "Heavy card 110 lb", "110", Finish.SMOOTH),
				sheet("card-metallic-250", "Metallic card 250 g/m²", StockFamily.CARD, "250", Finish.METALLIC)
						.abrasion(new BigDecimal("1.2")).build(),
				sheet("card-glitter-300", "Glitter card 300 g/m²", StockFamily.CARD, "300", Finish.GLITTER)
						.abrasion(new BigDecimal("3")).description("Wears blades fast; fine dust").build(),
				sheet("paper-80", "Writing paper 80 g/m²", StockFamily.PAPER, "80", Finish.SMOOTH).sizes(
						List.of(Formats.parse("A4"), Formats.parse("A3"))).build(),
				sheet("paper-120", "Drawing paper 120 g/m²", StockFamily.PAPER, "120", Finish.SMOOTH).sizes(
						List.of(Formats.parse("A4"), Formats.parse("A3"))).build(),
				Stock.named("Text paper 80 lb").id("paper-text-80lb").family(StockFamily.PAPER).finish(Finish.SMOOTH)
						.basisWeight(new BasisWeight(new BigDecimal(80), Grade.TEXT)).sizes(sizes("letter", "tabloid")).build(),
				sheet("label-paper", "Label paper on a liner", StockFamily.LABEL, "150", Finish.ADHESIVE)
						.description("Kiss cut: the liner stays whole").sizes(sizes("A4", "letter")).build(),
				film("film-transfer", "Adhesive film", "0.08").sizes(sizes("roll 305mm", "roll 12in", "roll 610mm"))
						.description("If it may be PVC, it is for the blade only, never for heat").build(),
				film("film-stencil", "Stencil film", "0.19").sizes(sizes("A4", "12x12in")).build(),
				thick("board-grey-1mm", "Grey board 1 mm", StockFamily.BOARD, "1").grammage(new BigDecimal(620))
						.abrasion(new BigDecimal(2)).build(),
				thick("foam-sheet-2mm", "Foam sheet 2 mm", StockFamily.FOAM, "2").build(),
				thick("felt-1mm", "Felt 1 mm", StockFamily.FABRIC, "1").build());
	}

	private static Stock card(String id, String name, String pounds, Finish finish) {
		return Stock.named(name).id("generic-" + id).family(StockFamily.CARD).finish(finish)
				.basisWeight(new BasisWeight(new BigDecimal(pounds), Grade.COVER)).sizes(sizes(SQUARES_AND_LETTER)).build();
	}

	private static StockBuilder sheet(String id, String name, StockFamily family, String grammage, Finish finish) {
		return Stock.named(name).id("generic-" + id).family(family).finish(finish).grammage(new BigDecimal(grammage))
				.sizes(sizes(SQUARES_AND_LETTER));
	}

	private static StockBuilder film(String id, String name, String mm) {
		return thick(id, name, StockFamily.FILM, mm).grain(Grain.NONE);
	}

	private static StockBuilder thick(String id, String name, StockFamily family, String mm) {
		return Stock.named(name).id("generic-" + id).family(family).caliper(new Thickness(new BigDecimal(mm)));
	}

	private static List<Format> sizes(String... texts) {
		return Arrays.stream(texts).map(Formats::parse).toList();
	}
}
