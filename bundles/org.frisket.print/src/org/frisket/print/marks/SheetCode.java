package org.frisket.print.marks;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.print.picture.Grey;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.EncodeHintType;
import com.google.zxing.PlanarYUVLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;

/**
 * Which sheet of which job a printed sheet is, as a QR code of ISO/IEC 18004 (level M) beside the marks: its text is
 * {@code frisket:sheet:} with the job's number, a slash and the sheet's number from 1, such as {@code frisket:sheet:10247/2}.
 *
 * @param job   the job's number @param sheet the sheet's, from 1
 */
public record SheetCode(long job, int sheet) {

	/** Light modules around the code, as the standard asks for. */
	public static final int QUIET = 4;
	private static final String START = "frisket:sheet:";
	private static final Pattern TEXT = Pattern.compile(START + "([1-9][0-9]{0,17})/([1-9][0-9]{0,5})");

	/** @throws IllegalArgumentException unless both numbers are at least 1 */
	public SheetCode {
		if (job < 1 || sheet < 1) {
			throw new IllegalArgumentException("no sheet " + sheet + " of a job " + job);
		}
	}

	/** What the code says. */
	public String text() {
		return START + job + "/" + sheet;
	}

	/** Empty for a text that is none of a sheet. */
	public static Optional<SheetCode> parse(String text) {
		Matcher matcher = TEXT.matcher(text.strip());
		return matcher.matches()
				? Optional.of(new SheetCode(Long.parseLong(matcher.group(1)), Integer.parseInt(matcher.group(2))))
				: Optional.empty();
	}

	/** The dark modules, one square each. @param square to be filled; its bare margin of {@value #QUIET} modules lies in it */
	public Outline modules(Bounds square) {
		BitMatrix matrix = matrix();
		double module = Math.min(square.width(), square.height()) / matrix.getWidth();
		List<Contour> dark = new ArrayList<>();
		for (int y = 0; y < matrix.getHeight(); y++) {
			for (int x = 0; x < matrix.getWidth(); x++) {
				if (matrix.get(x, y)) {
					Point corner = new Point(square.minX() + x * module, square.minY() + y * module);
					dark.add(Contour.polygon(List.of(corner, corner.plus(new Point(0, module)),
							corner.plus(new Point(module, module)), corner.plus(new Point(module, 0)))));
				}
			}
		}
		return new Outline(dark);
	}

	private BitMatrix matrix() {
		try {
			return new QRCodeWriter().encode(text(), BarcodeFormat.QR_CODE, 0, 0,
					Map.of(EncodeHintType.MARGIN, QUIET, EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M));
		} catch (WriterException tooLong) {
			throw new IllegalStateException(tooLong);
		}
	}

	/** Looks for one in a picture, which may be turned; empty if there is none that can be read. */
	public static Optional<SheetCode> find(Grey picture) {
		byte[] luminance = new byte[picture.width() * picture.height()];
		for (int y = 0; y < picture.height(); y++) {
			for (int x = 0; x < picture.width(); x++) {
				luminance[y * picture.width() + x] = (byte) picture.at(x, y);
			}
		}
		PlanarYUVLuminanceSource source = new PlanarYUVLuminanceSource(luminance, picture.width(), picture.height(), 0, 0,
				picture.width(), picture.height(), false);
		Map<DecodeHintType, Object> hints = new EnumMap<>(DecodeHintType.class);
		hints.put(DecodeHintType.TRY_HARDER, Boolean.TRUE);
		try {
			return parse(new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)), hints).getText());
		} catch (ReaderException none) {
			return Optional.empty();
		}
	}
}
