package org.frisket.prepare.checks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
 * Lengths carry their unit, angles are in degrees. A stock that is neither built in nor on the shelf begins as card. What is
 * said of one stock prevails over what is said of all, wherever it stands. Lines that begin with # are remarks. A line that cannot be used is told of by its number, and the others hold.
 */
final class LimitsFile {

	private static final String ALL = "all";

	/** The file as it was read last: it is asked for after every key. */
	private static volatile Read last;

	private record Read(Path file, FileTime changed, long size, LimitsFile limits) {
	}

	private static final LimitsFile NONE = new LimitsFile();

	private final Map<Limit, Double> all = new EnumMap<>(Limit.class);
	private final Map<String, Map<Limit, Double>> own = new LinkedHashMap<>();
	private final List<String> problems = new ArrayList<>();
	/** These over what was asked for last. */
	private volatile StudioLimits over;

	private LimitsFile() {
	}

	/** What a file says; nothing if there is none. */
	static LimitsFile of(Path file) {
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
			return NONE;
		} catch (IOException failed) {
			LimitsFile limits = new LimitsFile();
			limits.problems.add(NLS.bind(Messages.StudioLimits_unreadable, file, WholeFile.reason(failed)));
			return limits;
		}
	}

	private static LimitsFile read(Path file) throws IOException {
		LimitsFile limits = new LimitsFile();
		String[] lines = new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\\R", -1);
		for (int i = 0; i < lines.length; i++) {
			limits.take(lines[i].strip(), i + 1, file);
		}
		return limits;
	}

	private void take(String line, int number, Path file) {
		if (line.isEmpty() || line.startsWith("#") || line.startsWith("\uFEFF#")) {
			return;
		}
		try {
			int equals = line.indexOf('=');
			int dot = equals < 0 ? -1 : line.substring(0, equals).lastIndexOf('.');
			if (dot <= 0) {
				throw new IllegalArgumentException(Messages.StudioLimits_form);
			}
			set(line.substring(0, dot).strip(), line.substring(dot + 1, equals).strip(),
					line.substring(equals + 1).strip());
		} catch (IllegalArgumentException bad) {
			problems.add(NLS.bind(Messages.StudioLimits_line, new Object[] { file, number, bad.getMessage() }));
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
		(stock.equals(ALL) ? all : own.computeIfAbsent(stock, each -> new EnumMap<>(Limit.class))).put(limit, value);
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

	/** What the file says of one stock alone. */
	Map<Limit, Double> of(String stock) {
		return own.getOrDefault(stock, Map.of());
	}

	/** What it says of all stocks. */
	Map<Limit, Double> ofAll() {
		return all;
	}

	/** The stocks it names, in its order. */
	Set<String> stocks() {
		return own.keySet();
	}

	List<String> problems() {
		return problems;
	}

	/** These limits where the file says something, those of the shelf and the built-in ones elsewhere. */
	StockLimits over(ShelfLimits shelf) {
		StudioLimits both = over;
		if (both == null || both.shelf() != shelf) {
			both = new StudioLimits(this, shelf);
			over = both;
		}
		return both;
	}
}
