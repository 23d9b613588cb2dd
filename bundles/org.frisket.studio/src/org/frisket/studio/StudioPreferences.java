package org.frisket.studio;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

import org.frisket.model.WholeFile;

/**
 * What a studio has decided for all its desks, in a text file of {@code key=value} lines in UTF-8. Every question looks at
 * the file, for another desk may have written it, and reads it if it is another.
 */
public final class StudioPreferences {

	/** What was written so shortly before it was read may be written again and look the same: times are coarse on some discs. */
	private static final Duration YOUNG = Duration.ofSeconds(3);

	private static final Map<Path, Seen> SEEN = new ConcurrentHashMap<>();

	/** What was in a file, and what it looked like. */
	private record Seen(FileTime modified, long size, Object key, Map<String, String> values) {

		boolean looksLike(BasicFileAttributes now) {
			return modified.equals(now.lastModifiedTime()) && size == now.size() && Objects.equals(key, now.fileKey());
		}
	}

	private final Path file;

	StudioPreferences(Path file) {
		this.file = file;
	}

	/**
	 * A value; empty if it is not set.
	 *
	 * @throws IOException if the file is there but cannot be read
	 */
	public Optional<String> get(String key) throws IOException {
		return Optional.ofNullable(values().get(key));
	}

	/** The keys of values that are set and begin like this, in the order of the alphabet. */
	public List<String> keys(String beginning) throws IOException {
		return values().keySet().stream().filter(key -> key.startsWith(beginning)).sorted().toList();
	}

	/** Sets one value and leaves the others as they are in the file now. */
	public void put(String key, String value) throws IOException {
		putAll(Map.of(key, value));
	}

	/** Sets several values at once, and leaves the others as they are in the file now. */
	public synchronized void putAll(Map<String, String> changed) throws IOException {
		TreeMap<String, String> values = read();
		TreeMap<String, String> before = new TreeMap<>(values);
		values.putAll(changed);
		if (values.equals(before)) {
			return;
		}
		StringBuilder text = new StringBuilder();
		values.forEach((k, v) -> text.append(escaped(k, true)).append('=').append(escaped(v, false)).append('\n'));
		WholeFile.write(out -> out.write(text.toString().getBytes(StandardCharsets.UTF_8)), file);
	}

	private Map<String, String> values() throws IOException {
		BasicFileAttributes now;
		try {
			now = Files.readAttributes(file, BasicFileAttributes.class);
		} catch (NoSuchFileException none) {
			return Map.of();
		}
		Seen seen = SEEN.get(file);
		if (seen != null && seen.looksLike(now)) {
			return seen.values();
		}
		Map<String, String> values = read();
		if (now.lastModifiedTime().toInstant().isBefore(Instant.now().minus(YOUNG))) {
			SEEN.put(file, new Seen(now.lastModifiedTime(), now.size(), now.fileKey(), values));
		}
		return values;
	}

	private TreeMap<String, String> read() throws IOException {
		TreeMap<String, String> values = new TreeMap<>();
		try (Reader text = new StringReader(Files.readString(file))) {
			Properties properties = new Properties();
			properties.load(text);
			properties.forEach((key, value) -> values.put((String) key, (String) value));
		} catch (NoSuchFileException | FileNotFoundException none) {
			// a studio that has decided nothing yet
		} catch (IllegalArgumentException malformed) {
			throw new IOException(malformed.getMessage(), malformed);
		}
		return values;
	}

	/** As {@link Properties} reads it; its own writing puts the time into the file. */
	private static String escaped(String text, boolean key) {
		StringBuilder escaped = new StringBuilder();
		for (int i = 0; i < text.length(); i++) {
			char c = text.charAt(i);
			boolean leads = i == 0 && (c == '#' || c == '!' || c == ' ');
			boolean parts = key && (c == ' ' || c == ':' || c == '=');
			switch (c) {
			case '\n' -> escaped.append("\\n");
			case '\r' -> escaped.append("\\r");
			case '\t' -> escaped.append("\\t");
			case '\f' -> escaped.append("\\f");
			case '\\' -> escaped.append("\\\\");
			default -> escaped.append(leads || parts ? "\\" : "").append(c);
			}
		}
		return escaped.toString();
	}
}
