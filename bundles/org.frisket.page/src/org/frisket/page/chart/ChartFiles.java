package org.frisket.page.chart;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.model.WholeFile;

/** A chart as files: one PDF, or a PNG for each page. */
public final class ChartFiles {

	/** What a file may end in. */
	public static final List<String> ENDINGS = List.of(".pdf", ".png");

	private ChartFiles() {
	}

	/** Whether a chart can be written to a file of this name. */
	public static boolean canWrite(Path target) {
		return ENDINGS.contains(ending(target));
	}

	private static String ending(Path target) {
		String name = target.getFileName() == null ? "" : target.getFileName().toString();
		int stop = name.lastIndexOf('.');
		return stop < 0 ? "" : name.substring(stop).toLowerCase(Locale.ROOT);
	}

	/**
	 * Makes all pages, then writes them. Several pages of pictures get numbers before the ending.
	 *
	 * @return what was written
	 * @throws IllegalArgumentException if the file ends in something else
	 * @throws IOException              naming the file that cannot be written and why
	 */
	public static List<Path> write(ChartPages pages, Path target, Monitor monitor) throws IOException {
		if (!canWrite(target)) {
			throw new IllegalArgumentException(NLS.bind(Messages.ChartFiles_ending, target));
		}
		Map<Path, byte[]> files = ending(target).equals(".pdf") ? Map.of(target, pdf(pages, monitor))
				: pictures(pages, target, monitor);
		for (Map.Entry<Path, byte[]> file : files.entrySet()) {
			monitor.check();
			try {
				WholeFile.write(stream -> stream.write(file.getValue()), file.getKey());
			} catch (IOException e) {
				throw new IOException(file.getKey() + ": " + WholeFile.reason(e), e);
			}
		}
		return List.copyOf(files.keySet());
	}

	private static byte[] pdf(ChartPages pages, Monitor monitor) throws IOException {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		pages.writePdf(bytes, monitor);
		return bytes.toByteArray();
	}

	private static Map<Path, byte[]> pictures(ChartPages pages, Path target, Monitor monitor) throws IOException {
		String name = target.getFileName().toString();
		int stop = name.lastIndexOf('.');
		Map<Path, byte[]> files = new LinkedHashMap<>();
		for (int i = 0; i < pages.count(); i++) {
			monitor.check();
			ByteArrayOutputStream bytes = new ByteArrayOutputStream();
			pages.writePng(i, bytes);
			files.put(pages.count() == 1 ? target
					: target.resolveSibling("%s-%d%s".formatted(name.substring(0, stop), i + 1, name.substring(stop))),
					bytes.toByteArray());
			monitor.worked((i + 1.0) / pages.count());
		}
		return files;
	}
}
