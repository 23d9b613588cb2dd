package org.frisket.studio.archive;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.osgi.util.NLS;
import org.frisket.model.WholeFile;
import org.frisket.studio.StudioFolder;

/**
 * What an archive has of a studio's folder.
 *
 * @param file    the archive, as messages call it
 * @param entries by their names in the folder
 */
record ArchivedFiles(ZipFile zip, Path file, StudioFolder studio, Map<String, ZipEntry> entries) {

	/** Where they are in the archive. */
	static final String FOLDER = "files/";

	/** A studio's own decisions are merged into what is there; where its database is stays as it is. */
	private static final String PREFERENCES = "studio.properties";
	private static final Set<String> STAY = Set.of("database", "layout");
	/** What of a studio's folder is no file of it: the database, its lock, its mark. */
	private static final Set<String> NOT_FILES = Set.of("studio.mv.db", "studio.lock", "studio.revision",
			"studio-update.mv.db", "studio-tidy.mv.db");

	/** Whether something in a studio's folder is part of an archive. @param name in the folder, with slashes */
	static boolean isFile(String name) {
		return name.equals(PREFERENCES) || !NOT_FILES.contains(name);
	}

	/** Of a studio, by their names in its folder, with slashes. */
	static Map<String, Path> of(StudioFolder studio) throws IOException {
		Map<String, Path> files = new TreeMap<>();
		if (Files.isDirectory(studio.path())) {
			try (Stream<Path> all = Files.walk(studio.path())) {
				for (Path file : all.filter(Files::isRegularFile).toList()) {
					String name = studio.path().relativize(file).toString().replace('\\', '/');
					if (isFile(name)) {
						files.put(name, file);
					}
				}
			}
		}
		return files;
	}

	/** Reads all of the archive once: nothing is to be begun that could not be brought to its end. */
	static ArchivedFiles checked(ZipFile zip, Path file, StudioFolder studio, IProgressMonitor monitor)
			throws IOException {
		SubMonitor progress = SubMonitor.convert(monitor, zip.size());
		Map<String, ZipEntry> entries = new TreeMap<>();
		for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements();) {
			ZipEntry entry = all.nextElement();
			progress.split(1);
			if (!entry.isDirectory() && entry.getName().startsWith(FOLDER)) {
				String name = entry.getName().substring(FOLDER.length());
				if (!belongs(name, studio.path())) {
					throw new ArchiveException(file, NLS.bind(Messages.StudioArchive_leadsOut, entry.getName()));
				}
				entries.put(name, entry);
			}
			if (!isWhole(zip, file, entry)) {
				throw new ArchiveException(file, NLS.bind(Messages.StudioArchive_damaged, entry.getName()));
			}
		}
		return new ArchivedFiles(zip, file, studio, entries);
	}

	/** Whether a file of that name, and of no other, lies in a studio's folder and is not of its database. */
	private static boolean belongs(String name, Path folder) {
		try {
			Path target = folder.resolve(name).normalize();
			return !name.contains("\\") && !name.contains(":") && target.startsWith(folder) && !target.equals(folder)
					&& folder.relativize(target).toString().replace('\\', '/').equals(name)
					&& (name.equals(PREFERENCES) || isFile(onAnyDisc(name)) && !onAnyDisc(name).equals(PREFERENCES));
		} catch (InvalidPathException noName) {
			return false;
		}
	}

	/** Some discs do not tell capitals from small letters, or leave dots and blanks at the end away. */
	private static String onAnyDisc(String name) {
		return name.toLowerCase(Locale.ROOT).replaceAll("[. ]+$", "");
	}

	/** The library does not look at the sum that is kept of each entry. */
	private static boolean isWhole(ZipFile zip, Path file, ZipEntry entry) throws IOException {
		CRC32 sum = new CRC32();
		try (InputStream in = new CheckedInputStream(UnpackedStream.of(zip, file, entry), sum)) {
			if (entry.getName().equals(FOLDER + PREFERENCES)) {
				properties(in);
			}
			in.transferTo(OutputStream.nullOutputStream());
			return sum.getValue() == entry.getCrc();
		} catch (ZipException | EOFException | IllegalArgumentException e) {
			return false;
		}
	}

	/** @throws IllegalArgumentException if they are none */
	private static Map<String, String> properties(InputStream in) throws IOException {
		Properties properties = new Properties();
		properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
		Map<String, String> kept = new TreeMap<>();
		properties.stringPropertyNames().stream().filter(key -> !STAY.contains(key))
				.forEach(key -> kept.put(key, properties.getProperty(key)));
		return kept;
	}

	/** Brings them back, after the tables. */
	void restore() throws IOException {
		for (Map.Entry<String, ZipEntry> each : entries.entrySet()) {
			try (InputStream in = UnpackedStream.of(zip, file, each.getValue())) {
				restore(each.getKey(), in);
			} catch (IOException e) {
				throw new ArchiveException(file, NLS.bind(Messages.StudioArchive_notAllFiles, each.getKey(),
						WholeFile.reason(e)), e);
			}
		}
	}

	private void restore(String name, InputStream in) throws IOException {
		if (name.equals(PREFERENCES)) {
			studio.preferences().putAll(properties(in));
		} else {
			Path target = studio.path().resolve(name);
			Files.createDirectories(target.getParent());
			WholeFile.write(in::transferTo, target);
		}
	}
}
