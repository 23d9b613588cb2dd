package org.frisket.print.output;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

import javax.imageio.ImageIO;

import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.OptionValues;
import org.frisket.sheets.LaidSheet;
import org.frisket.toolpath.RunChoices;

/**
 * A file to cut as a renderer of another project sees it: Debian's rsvg-convert (librsvg), as many pixels to the mm
 * as the pages.
 */
final class CutRaster {

	private static final String DPI = Double.toString(RasterPage.PER_MM * 25.4);

	private CutRaster() {
	}

	static BufferedImage of(LaidSheet cut, Path folder) throws Exception {
		Path svg = folder.resolve("cut.svg");
		Exporter exporter = Exporters.forFile("cut.svg").orElseThrow().create();
		try (OutputStream out = Files.newOutputStream(svg)) {
			exporter.export(Handoff.of(cut, () -> {
				throw new IOException("no workshop");
			}, RunChoices.plain()), OptionValues.of(exporter.options(), Map.of()), Monitor.NONE, out);
		}
		RasterPage.output("rsvg-convert", "-d", DPI, "-p", DPI, "-b", "white", "-o", folder.resolve("cut.png").toString(),
				svg.toString());
		return ImageIO.read(folder.resolve("cut.png").toFile());
	}

	/** Middle of the ink along a row, or down a column, between two places, mm; the colour of a line does not matter. */
	static double middle(BufferedImage image, double from, double to, double at, boolean down) {
		double sum = 0;
		double weighed = 0;
		for (int i = (int) Math.round(from * RasterPage.PER_MM); i < Math.round(to * RasterPage.PER_MM); i++) {
			double ink = ink(image, i, at, down, 16);
			sum += ink;
			weighed += ink * (i + 0.5);
		}
		return weighed / sum / RasterPage.PER_MM;
	}

	/** Where black begins between a bare place and one in it, mm. */
	static double edge(BufferedImage image, double bare, double inked, double at, boolean down) {
		double sum = 0;
		for (int i = (int) Math.round(Math.min(bare, inked) * RasterPage.PER_MM); i < Math
				.round(Math.max(bare, inked) * RasterPage.PER_MM); i++) {
			sum += ink(image, i, at, down, 0);
		}
		double wide = sum / RasterPage.PER_MM;
		return inked > bare ? Math.round(inked * RasterPage.PER_MM) / (double) RasterPage.PER_MM - wide
				: Math.round(inked * RasterPage.PER_MM) / (double) RasterPage.PER_MM + wide;
	}

	private static double ink(BufferedImage image, int along, double at, boolean down, int shift) {
		int across = (int) (at * RasterPage.PER_MM);
		return 1 - (image.getRGB(down ? across : along, down ? along : across) >> shift & 0xff) / 255.0;
	}
}
