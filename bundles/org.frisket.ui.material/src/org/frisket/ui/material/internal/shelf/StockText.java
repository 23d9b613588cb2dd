package org.frisket.ui.material.internal.shelf;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.Caliper;
import org.frisket.material.Finish;
import org.frisket.material.Grain;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.sizes.Format;
import org.frisket.material.weights.Grade;
import org.frisket.material.weights.Measures;
import org.frisket.material.weights.Thickness;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/** What is said of stock, for people. */
final class StockText {

	private static final int MM_DECIMALS = 3;
	private static final int MIL_DECIMALS = 1;

	private StockText() {
	}

	static String of(StockFamily family) {
		return switch (family) {
		case CARD -> Messages.family_card;
		case PAPER -> Messages.family_paper;
		case LABEL -> Messages.family_label;
		case FILM -> Messages.family_film;
		case FABRIC -> Messages.family_fabric;
		case BOARD -> Messages.family_board;
		case FOAM -> Messages.family_foam;
		case OTHER -> Messages.family_other;
		};
	}

	static String of(Finish finish) {
		return switch (finish) {
		case UNKNOWN -> Messages.finish_unknown;
		case COATED -> Messages.finish_coated;
		case SMOOTH -> Messages.finish_smooth;
		case TEXTURED -> Messages.finish_textured;
		case METALLIC -> Messages.finish_metallic;
		case GLITTER -> Messages.finish_glitter;
		case ADHESIVE -> Messages.finish_adhesive;
		};
	}

	static String of(Grain grain) {
		return switch (grain) {
		case UNKNOWN -> Messages.grain_unknown;
		case LONG -> Messages.grain_long;
		case SHORT -> Messages.grain_short;
		case NONE -> Messages.grain_none;
		};
	}

	static String of(Caliper.Source source) {
		return source == Caliper.Source.MEASURED ? Messages.caliper_measured : Messages.caliper_estimated;
	}

	/** The grade with the sheet by which its pounds are counted. */
	static String of(Grade grade) {
		return switch (grade) {
		case BOND -> Messages.grade_bond;
		case TEXT -> Messages.grade_text;
		case COVER -> Messages.grade_cover;
		case BRISTOL -> Messages.grade_bristol;
		case INDEX -> Messages.grade_index;
		case TAG -> Messages.grade_tag;
		case NEWSPRINT -> Messages.grade_newsprint;
		case WRAPPING -> Messages.grade_wrapping;
		case BOARD -> Messages.grade_board;
		};
	}

	static String number(BigDecimal value, int decimals) {
		return LengthField.number(Measures.rounded(value, decimals).doubleValue());
	}

	static String grammage(BigDecimal grammage) {
		return NLS.bind(Messages.StockText_grammage, number(grammage, 1));
	}

	/** In mm, or in mils where the studio works in inches. */
	static String thickness(Thickness thickness) {
		return LengthUnit.shown() == LengthUnit.INCH
				? NLS.bind(Messages.StockText_mils, number(thickness.mils(), MIL_DECIMALS))
				: NLS.bind(Messages.StockText_mm, number(thickness.mm(), MM_DECIMALS));
	}

	/** With the mark that tells how it is known. */
	static String caliper(Caliper caliper) {
		return NLS.bind(caliper.source() == Caliper.Source.MEASURED ? Messages.StockText_measured
				: Messages.StockText_estimated, thickness(caliper.thickness()));
	}

	/** Sheets, or metres of what comes on rolls only. */
	static String onHand(Stock stock) {
		boolean roll = !stock.sizes().isEmpty() && stock.sizes().stream().allMatch(Format.Roll.class::isInstance);
		boolean one = stock.onHand().compareTo(BigDecimal.ONE) == 0;
		return NLS.bind(roll ? Messages.StockText_metres : one ? Messages.StockText_sheet : Messages.StockText_sheets,
				number(stock.onHand(), MM_DECIMALS));
	}

	/** Family, grammage, caliper and colour, as far as they are known. */
	static String second(Stock stock) {
		String measures = measures(stock, false);
		return stock.colour().isEmpty() ? measures : measures + Messages.StockText_parting + stock.colour();
	}

	/** @param brief whether an estimated caliper is marked by a sign alone, and a measured one by none */
	static String measures(Stock stock, boolean brief) {
		StringBuilder text = new StringBuilder(of(stock.family()));
		stock.grammage().ifPresent(grammage -> append(text, grammage(grammage)));
		stock.caliper().ifPresent(caliper -> append(text, brief ? brief(caliper) : caliper(caliper)));
		return text.toString();
	}

	/** So many of the last of family, grammage and caliper, as far as they are known; one at least. */
	static String least(Stock stock, int count) {
		String[] parts = measures(stock, true).split(Pattern.quote(Messages.StockText_parting));
		return String.join(Messages.StockText_parting,
				Arrays.copyOfRange(parts, Math.max(0, parts.length - count), parts.length));
	}

	private static String brief(Caliper caliper) {
		String thickness = thickness(caliper.thickness());
		return caliper.source() == Caliper.Source.MEASURED ? thickness : NLS.bind(Messages.StockText_about, thickness);
	}

	private static void append(StringBuilder text, String more) {
		text.append(Messages.StockText_parting).append(more);
	}

	/** All of the row, for who hears it. */
	static String spoken(Stock stock) {
		String text = stock.name() + Messages.StockText_parting + second(stock) + Messages.StockText_parting + onHand(stock);
		return stock.isLow() ? text + Messages.StockText_parting + Messages.StockText_low : text;
	}

	/** What people call it in their language, to be looked for. */
	static String words(Stock stock) {
		return of(stock.family()) + '\n' + of(stock.finish()) + '\n' + second(stock)
				+ (stock.isLow() ? '\n' + Messages.StockText_low : ""); //$NON-NLS-1$
	}
}
