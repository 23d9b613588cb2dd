package org.frisket.orders.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/**
 * The number of a job as a square of dark and light modules, a QR code of ISO/IEC 18004. Its text is
 * {@code frisket:job:} and the number in decimal digits, such as {@code frisket:job:10247}; nothing else of the job is in it.
 * About 15 % of it may be dirty or torn (level M), and four light modules are around it, as the standard asks for.
 */
public final class JobCode {

	/** Light modules around it. */
	public static final int QUIET = 4;
	private static final String START = "frisket:job:";
	private static final Pattern NUMBER = Pattern.compile("[1-9][0-9]{0,17}");
	private static final Pattern TEXT = Pattern.compile(Pattern.quote(START) + "(" + NUMBER.pattern() + ")");

	private JobCode() {
	}

	/** What the code of a job says; empty for a number that no order book gives. */
	public static String text(String number) {
		return number != null && NUMBER.matcher(number).matches() ? START + number : "";
	}

	/** The number of the job that a code is of; empty for a code that is of none. */
	public static OptionalLong number(String text) {
		Matcher matcher = TEXT.matcher(text.strip());
		return matcher.matches() ? OptionalLong.of(Long.parseLong(matcher.group(1))) : OptionalLong.empty();
	}

	/**
	 * The dark modules of a text, without the light ones around them: runs of each row.
	 *
	 * @param left of the square that they take up @param top of it @param side of it, in mm
	 */
	public static Outline modules(String text, double left, double top, double side) {
		ByteMatrix matrix = matrix(text);
		double module = side / matrix.getWidth();
		List<Contour> dark = new ArrayList<>();
		for (int row = 0; row < matrix.getHeight(); row++) {
			for (int from = 0; from < matrix.getWidth(); from++) {
				int to = from;
				while (to < matrix.getWidth() && matrix.get(to, row) == 1) {
					to++;
				}
				if (to > from) {
					double x = left + from * module;
					double end = left + to * module;
					double y = top + row * module;
					dark.add(Contour.polygon(List.of(new Point(x, y), new Point(x, y + module), new Point(end, y + module),
							new Point(end, y))));
					from = to;
				}
			}
		}
		return new Outline(dark);
	}

	/** How many modules the code of a text has on a side. */
	public static int size(String text) {
		return matrix(text).getWidth();
	}

	private static ByteMatrix matrix(String text) {
		try {
			return Encoder.encode(text, ErrorCorrectionLevel.M, Map.of(EncodeHintType.CHARACTER_SET, "ISO-8859-1")).getMatrix();
		} catch (WriterException tooLong) {
			throw new IllegalArgumentException(tooLong.getMessage(), tooLong);
		}
	}
}
