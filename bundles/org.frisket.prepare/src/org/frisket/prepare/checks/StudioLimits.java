package org.frisket.prepare.checks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Length;
import org.frisket.model.WholeFile;
import org.frisket.prepare.Unit;

/**
 * The limits of a studio, in a text file of {@code stock.limit = value} lines in UTF-8:
 *
 * <pre>
 * card.thinnest-stroke = 1.2 mm
 * pearl-300.smallest-hole = 1.5 mm
 * all.blade-offset = 0.3 mm
 * </pre>
 *
 * Lengths carry their unit, angles are in degrees. A stock that is not built in begins as card. Lines that begin with #
 * are remarks. A line that cannot be used is told of by its number, and the others hold.
 */
final class StudioLimits implements StockLimits {

	private static final String ALL = "all";

	/** The file as it was read last: it is asked for after every key. */
	private static volatile Read last;

	private record Read(Path file, FileTime changed, long size, StudioLimits limits) {
	}

	private final Map<String, Limits> known = new LinkedHashMap<>();
	private final List<String> problems = new ArrayList<>();
	/** What a stock that is not built in begins as. */
	private Limits usual = Limits.CARD;

	private StudioLimits() {
		for (String stock : BUILT_IN.stocks()) {
			known.put(stock, BUILT_IN.limits(stock).orElseThrow());
		}
	}

	/** What a file says; the built-in ones if there is none. */
	static StockLimits of(Path file) {
		try {
			FileTime changed = Files.getLastModifiedTime(file);
			long size = Files.size(file);
			Read read = last;
			if (read == null || !read.file().equals(file) || !read.changed().equals(changed) || read.size() != size) {
				read = new Read(file, changed, size, read(file));
				last = read;
			}
			return read.limits();
		} catch (NoSuchFileException none) {
			return BUILT_IN;
		} catch (IOException failed) {
			StudioLimits limits = new StudioLimits();
			limits.problems.add(NLS.bind(Messages.StudioLimits_unreadable, file, WholeFile.reason(failed)));
			return limits;
		}
	}

	private static StudioLimits read(Path file) throws IOException {
		StudioLimits limits = new StudioLimits();
		String[] lines = new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\\R", -1);
		// what is said of one stock prevails, wherever it stands
		for (boolean all : new boolean[] { true, false }) {
			for (int i = 0; i < lines.length; i++) {
				limits.take(lines[i].strip(), i + 1, file, all);
			}
		}
		return limits;
	}

	private void take(String line, int number, Path file, boolean all) {
		if (line.isEmpty() || line.startsWith("#") || line.startsWith("\uFEFF#")) {
			return;
		}
		try {
			int equals = line.indexOf('=');
			int dot = equals < 0 ? -1 : line.substring(0, equals).lastIndexOf('.');
			if (dot <= 0) {
				throw new IllegalArgumentException(Messages.StudioLimits_form);
			}
			String stock = line.substring(0, dot).strip();
			if (stock.equals(ALL) == all) {
				set(stock, line.substring(dot + 1, equals).strip(), line.substring(equals + 1).strip());
			}
		} catch (IllegalArgumentException bad) {
			String problem = NLS.bind(Messages.StudioLimits_line, new Object[] { file, number, bad.getMessage() });
			if (!problems.contains(problem)) {
				problems.add(problem);
			}
		}
	}

	private void set(String stock, String key, String text) {
		Limit limit = Limit.of(key).orElseThrow(() -> new IllegalArgumentException(NLS.bind(Messages.StudioLimits_noLimit,
				key, Arrays.stream(Limit.values()).map(Limit::key).collect(Collectors.joining(", ")))));
		double value = value(limit, text);
		if (!(value >= limit.least() && value <= limit.most())) {
			throw new IllegalArgumentException(NLS.bind(Messages.StudioLimits_range, new Object[] { key,
					number(limit.least()), number(limit.most()), limit.unit().symbol(), text }));
		}
		if (stock.equals(ALL)) {
			known.replaceAll((each, limits) -> limits.with(limit, value));
			usual = usual.with(limit, value);
		} else {
			known.put(stock, known.getOrDefault(stock, usual).with(limit, value));
		}
	}

	private static double value(Limit limit, String text) {
		try {
			if (limit.unit() == Unit.MM && !text.equals("0")) {
				return Length.parse(text);
			}
			return Double.parseDouble(text.endsWith(limit.unit().symbol())
					? text.substring(0, text.length() - limit.unit().symbol().length()).strip()
					: text);
		} catch (IllegalArgumentException unreadable) {
			throw new IllegalArgumentException(NLS.bind(
					limit.unit() == Unit.MM ? Messages.StudioLimits_noLength : Messages.StudioLimits_noNumber, text));
		}
	}

	private static String number(double value) {
		return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
	}

	@Override
	public Optional<Limits> limits(String stock) {
		return Optional.ofNullable(known.get(stock));
	}

	@Override
	public List<String> stocks() {
		return List.copyOf(known.keySet());
	}

	@Override
	public List<String> problems() {
		return List.copyOf(problems);
	}
}
