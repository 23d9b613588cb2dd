package org.frisket.material.trials;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;

/** The values of one parameter on a test sheet, in the order of its columns or rows; to a millionth. */
public record Sweep(Parameter parameter, List<Double> values) {

	/** More cells a side nobody judges by eye. */
	public static final int MOST = 12;

	private static final String NUMBER = "(\\d{1,6}(?:\\.\\d{1,6})?)";
	private static final Pattern RANGE = Pattern.compile(NUMBER + "\\.\\." + NUMBER + "/" + NUMBER);
	private static final Pattern LIST = Pattern.compile(NUMBER + "(?:," + NUMBER + ")*");
	private static final double SLACK = 1e-9;

	public Sweep {
		values = values.stream().map(value -> Math.rint(value * 1e6) / 1e6).toList();
		if (values.stream().anyMatch(value -> !(value >= 0 && value < 1e6))) {
			throw new IllegalArgumentException(NLS.bind(Messages.Sweep_form, parameter.word() + '=' + values));
		}
		if (values.isEmpty() || values.size() > MOST) {
			throw new IllegalArgumentException(NLS.bind(Messages.Sweep_count, parameter.word(), MOST));
		}
		if (values.stream().distinct().count() != values.size()) {
			throw new IllegalArgumentException(NLS.bind(Messages.Sweep_twice, parameter.word()));
		}
		if (parameter == Parameter.PASSES && values.stream().anyMatch(each -> each < 1 || each != Math.rint(each))) {
			throw new IllegalArgumentException(NLS.bind(Messages.Sweep_passes, parameter.word()));
		}
	}

	/**
	 * A sweep as it is written: {@code pressure=10..30/5} from 10 to 30 in steps of 5, or {@code passes=1,2,3}.
	 *
	 * @throws IllegalArgumentException if it is neither; the message quotes it and says what is expected
	 */
	public static Sweep parse(String text) {
		int equals = text.indexOf('=');
		Parameter parameter = Parameter.of(text.substring(0, Math.max(0, equals)).strip())
				.orElseThrow(() -> wrong(text));
		String values = text.substring(equals + 1).strip();
		Matcher range = RANGE.matcher(values);
		if (range.matches()) {
			return new Sweep(parameter, range(Double.parseDouble(range.group(1)), Double.parseDouble(range.group(2)),
					Double.parseDouble(range.group(3)), text));
		}
		if (LIST.matcher(values).matches()) {
			return new Sweep(parameter, Arrays.stream(values.split(",")).map(Double::valueOf).toList());
		}
		throw wrong(text);
	}

	private static List<Double> range(double from, double to, double step, String text) {
		if (!(step > 0) || to < from) {
			throw wrong(text);
		}
		List<Double> values = new ArrayList<>();
		// one more than allowed is enough to be refused
		for (int i = 0; from + i * step <= to + SLACK && i <= MOST; i++) {
			values.add(from + i * step);
		}
		return values;
	}

	/** What {@link #parse} makes the same sweep of. */
	public String text() {
		return parameter.word() + '=' + String.join(",", values.stream().map(Sweep::plain).toList());
	}

	/** A value without trailing zeros. */
	public static String plain(double value) {
		BigDecimal rounded = new BigDecimal(value).setScale(6, RoundingMode.HALF_EVEN).stripTrailingZeros();
		return rounded.signum() == 0 ? "0" : rounded.toPlainString();
	}

	private static IllegalArgumentException wrong(String text) {
		return new IllegalArgumentException(NLS.bind(Messages.Sweep_form, text));
	}
}
