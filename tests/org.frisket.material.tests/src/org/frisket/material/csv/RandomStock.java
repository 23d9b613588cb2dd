package org.frisket.material.csv;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;

import org.frisket.material.Caliper;
import org.frisket.material.Finish;
import org.frisket.material.Grain;
import org.frisket.material.Price;
import org.frisket.material.Stock;
import org.frisket.material.StockBuilder;
import org.frisket.material.StockFamily;
import org.frisket.material.sizes.Format;
import org.frisket.material.sizes.PaperSize;
import org.frisket.material.weights.BasisWeight;
import org.frisket.material.weights.Grade;
import org.frisket.material.weights.Thickness;

/** Stock with anything that may stand in it. */
public final class RandomStock {

	private static final String LETTERS = "abcXYZ äß€漢\",;\t'=+-@#|. 0129";

	private RandomStock() {
	}

	public static Stock of(Random random, int number) {
		StockBuilder stock = Stock.named("Stock " + number + " " + text(random, 12).replace("\t", "")).id("s" + number)
				.family(one(random, StockFamily.values())).finish(one(random, Finish.values()))
				.grain(one(random, Grain.values())).description(text(random, 40)).colour(text(random, 9).replace("\t", ""))
				.notes(random.nextBoolean() ? text(random, 20) + "\n" + text(random, 20) : "");
		BigDecimal grammage = number(random, 400_000, 3).add(BigDecimal.TEN);
		int known = random.nextInt(3);
		stock.grammage(known == 0 ? null : grammage);
		stock.basisWeight(known == 1 ? null : new BasisWeight(known == 0 ? grammage
				: Grade.COVER.pounds(grammage).setScale(6, java.math.RoundingMode.HALF_EVEN), Grade.COVER));
		if (random.nextBoolean()) {
			BigDecimal real = stock.build().grammage().orElseThrow();
			stock.caliper(new Thickness(real.multiply(new BigDecimal("0.0012")).setScale(random.nextInt(4) + 3,
					java.math.RoundingMode.UP))).caliperSource(one(random, Caliper.Source.values()));
		}
		if (random.nextBoolean()) {
			stock.price(number(random, 100_000, 4)).currency(Price.currency(one(random, new String[] { "EUR", "USD", "JPY" })));
		}
		stock.sizes(Stream.generate(() -> size(random)).limit(random.nextInt(4)).toList());
		return stock.onHand(number(random, 9999, 3)).lowWater(number(random, 9999, 1)).abrasion(number(random, 9999, 3))
				.build();
	}

	private static Format size(Random random) {
		List<PaperSize> known = PaperSize.known();
		return switch (random.nextInt(4)) {
		case 0 -> new Format.Sheet(number(random, 900_000, 3), number(random, 900, 0));
		case 1 -> new Format.Roll(number(random, 900_000, 3), Optional.empty());
		case 2 -> new Format.Roll(new BigDecimal("304.8"), Optional.of(number(random, 900_000, 1)));
		default -> known.get(random.nextInt(known.size())).sheet();
		};
	}

	private static <T> T one(Random random, T[] all) {
		return all[random.nextInt(all.length)];
	}

	private static BigDecimal number(Random random, int most, int decimals) {
		return BigDecimal.valueOf(1 + random.nextInt(most), decimals);
	}

	private static String text(Random random, int most) {
		StringBuilder text = new StringBuilder();
		for (int i = random.nextInt(most); i > 0; i--) {
			text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
		}
		return text.toString();
	}
}
