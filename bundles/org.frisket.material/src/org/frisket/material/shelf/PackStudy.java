package org.frisket.material.shelf;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.Finish;
import org.frisket.material.sizes.Format;
import org.frisket.material.sizes.Formats;
import org.frisket.material.weights.BasisWeight;
import org.frisket.material.weights.Bulk;
import org.frisket.material.weights.Grade;
import org.frisket.material.weights.GradeMatch;
import org.frisket.material.weights.Mass;
import org.frisket.material.weights.MeasureException;
import org.frisket.material.weights.Measures;
import org.frisket.material.weights.Pack;
import org.frisket.material.weights.Reading;
import org.frisket.material.weights.Thickness;

/** What a pack may hold that says so many pounds, and how it is found out: by a scale, and by a stack of its sheets. */
public final class PackStudy {

	/** A scale with a display and a hand do no better; more decimals would only look exact. */
	private static final int GRAMMAGE_DECIMALS = 1;
	private static final int CALIPER_DECIMALS = 4;
	/** Of the weights that are near when the pack says nothing. */
	private static final int NEAREST = 5;

	private PackStudy() {
	}

	/**
	 * What came of weighing.
	 *
	 * @param grammage    in g/m²
	 * @param uncertainty by the scale, as a part of it
	 * @param matches     the weights it may be, the nearest first
	 */
	public record Weighed(BigDecimal grammage, double uncertainty, List<GradeMatch> matches) {
	}

	/**
	 * What stands on a pack; a bare number is in pounds.
	 *
	 * @throws MeasureException if it says neither a weight nor a caliper; the message quotes it
	 */
	public static Reading read(String says) {
		String text = plain(says);
		return Reading.parse(text.matches("[\\d.]+") ? text + " lb" : text);
	}

	/** Whether a pack says pounds, with their grade or without. */
	public static boolean hasPounds(String says) {
		try {
			return !says.isBlank() && !(read(says) instanceof Reading.Grammage || read(says) instanceof Reading.Caliper);
		} catch (MeasureException unreadable) {
			return false;
		}
	}

	/**
	 * What a sheet of some thickness may weigh, if it has this finish.
	 *
	 * @param bulk     middle of common practice for the finish, no source
	 * @param grammage in g/m²
	 */
	public record Estimate(Finish finish, Bulk bulk, BigDecimal grammage) {
	}

	/** A caliper never tells the weight: these are estimates, the heaviest first. */
	public static List<Estimate> estimates(Thickness caliper) {
		Map<Finish, Bulk> bulks = new EnumMap<>(
				Map.of(Finish.COATED, Bulk.COATED, Finish.SMOOTH, Bulk.SMOOTH, Finish.TEXTURED, Bulk.TEXTURED));
		return bulks.entrySet().stream().map(each -> new Estimate(each.getKey(), each.getValue(),
				caliper.micrometres().divide(each.getValue().value(), MathContext.DECIMAL64))).toList();
	}

	/** What so many pounds are in each grade that a sheet can have. */
	public static List<BasisWeight> possible(BigDecimal pounds) {
		return Arrays.stream(Grade.values()).filter(grade -> grade.grammage(pounds).compareTo(Measures.HEAVIEST) <= 0)
				.map(grade -> new BasisWeight(pounds, grade)).toList();
	}

	private static BigDecimal pounds(String says) {
		Reading reading = read(says);
		if (reading instanceof Reading.Pounds pounds) {
			return pounds.value();
		}
		if (reading instanceof Reading.Basis basis) {
			return basis.weight().pounds();
		}
		throw new MeasureException(NLS.bind(Messages.PackStudy_says, says.strip()));
	}

	/**
	 * @param says as the pack does; blank if it says nothing
	 * @param size of a sheet, such as {@code 12x12in} or {@code A4}
	 * @param mass what the scale shows to its last digit; a bare number is in g
	 * @throws MeasureException if one of them is not what it should be; the message quotes it
	 */
	public static Weighed weigh(String says, String size, String sheets, String mass) {
		Format.Sheet sheet = Formats.sheet(size.strip());
		String text = plain(mass);
		Mass shown = Mass.parse(text.matches("[\\d.]+") ? text + " g" : text);
		BigDecimal grammage = new Pack(sheet.width(), sheet.height(), sheets(sheets)).grammage(shown);
		List<GradeMatch> matches = says.isBlank()
				? GradeMatch.ofUsual(grammage, shown.uncertainty()).stream().limit(NEAREST).toList()
				: GradeMatch.ofLabel(pounds(says), grammage, shown.uncertainty());
		return new Weighed(Measures.rounded(grammage, GRAMMAGE_DECIMALS), shown.uncertainty(), matches);
	}

	/** @param height of the stack, in mm */
	public static Thickness measure(double height, String sheets) {
		Thickness exact = Pack.thickness(Measures.plain(BigDecimal.valueOf(height)), sheets(sheets));
		return new Thickness(Measures.rounded(exact.mm(), CALIPER_DECIMALS));
	}

	private static int sheets(String text) {
		if (!text.strip().matches("\\d{1,6}")) {
			throw new MeasureException(NLS.bind(Messages.PackStudy_sheets, text.strip()));
		}
		return Integer.parseInt(text.strip());
	}

	/** With a decimal point, as numbers are read everywhere. */
	private static String plain(String text) {
		return text.strip().replaceFirst("^(\\d*),(\\d+)", "$1.$2");
	}
}
