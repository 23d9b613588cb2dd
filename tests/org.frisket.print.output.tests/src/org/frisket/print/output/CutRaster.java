package org.frisket.print.output;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import javax.imageio.ImageIO;

import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.OptionValues;
import org.frisket.run.Workshop;
import org.frisket.sheets.LaidSheet;
import org.frisket.toolpath.RunChoices;

/**
 * A file to cut as renderers of other projects see it, as many pixels to the mm as the pages: an SVG by Debian's rsvg-convert
 * (librsvg), a plot by its hp2xx.
 */
final class CutRaster {

	private static final String DPI = Double.toString(RasterPage.PER_MM * 25.4);

	/** Of a plot, in mm. */
	private static final double STEP = 0.025;
	private static final Pattern PLACE = Pattern.compile("(?<=[PUD,])(-?[0-9]+),(-?[0-9]+)(?=[,;])");

	private CutRaster() {
	}

	static BufferedImage of(LaidSheet cut, Path folder) throws Exception {
		Path svg = written(cut, folder.resolve("cut.svg"), Map.of());
		RasterPage.output("rsvg-convert", "-d", DPI, "-p", DPI, "-b", "white", "-o", folder.resolve("cut.png").toString(),
				svg.toString());
		return ImageIO.read(folder.resolve("cut.png").toFile());
	}

	private static Path written(LaidSheet cut, Path file, Map<String, String> options) throws Exception {
		Exporter exporter = Exporters.forFile(file.getFileName().toString()).orElseThrow().create();
		try (OutputStream out = Files.newOutputStream(file)) {
			exporter.export(Handoff.of(cut, Workshop::plain, RunChoices.plain()), OptionValues.of(exporter.options(), options),
					Monitor.NONE, out);
		}
		return file;
	}

	/**
	 * The lines that hp2xx makes of a plot, which it writes as DXF: in mm, upwards, and from the lower left corner of all that is
	 * drawn. Where that corner is, the places in the plot itself say, in steps of 0.025 mm.
	 */
	static BufferedImage plotted(LaidSheet cut, double width, double height, Path folder) throws Exception {
		Path plot = written(cut, folder.resolve("cut.plt"), Map.of("change", "none"));
		Path dxf = folder.resolve("cut.dxf");
		RasterPage.output("hp2xx", "-q", "-t", "-m", "dxf", "-f", dxf.toString(), plot.toString());
		BufferedImage image = new BufferedImage((int) (width * RasterPage.PER_MM), (int) (height * RasterPage.PER_MM),
				BufferedImage.TYPE_INT_RGB);
		Graphics2D graphics = image.createGraphics();
		graphics.setBackground(Color.WHITE);
		graphics.clearRect(0, 0, image.getWidth(), image.getHeight());
		graphics.setColor(Color.BLACK);
		graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
		graphics.scale(RasterPage.PER_MM, -RasterPage.PER_MM);
		graphics.translate(0, -height);
		int[] corner = { Integer.MAX_VALUE, Integer.MAX_VALUE };
		// at the end the carriage goes home with nothing drawn
		for (Matcher place = PLACE.matcher(Files.readString(plot).replace("PU0,0;", "")); place.find();) {
			corner[0] = Math.min(corner[0], Integer.parseInt(place.group(1)));
			corner[1] = Math.min(corner[1], Integer.parseInt(place.group(2)));
		}
		graphics.translate(corner[0] * STEP, corner[1] * STEP);
		graphics.setStroke(new BasicStroke(0.2f));
		List<String> groups = Files.readAllLines(dxf);
		double[] line = new double[4];
		boolean entities = false;
		for (int i = 0; i + 1 < groups.size(); i += 2) {
			entities |= groups.get(i + 1).strip().equals("ENTITIES");
			int at = List.of("10", "20", "11", "21").indexOf(groups.get(i).strip());
			if (entities && at >= 0) {
				line[at] = Double.parseDouble(groups.get(i + 1).strip());
				if (at == 3) {
					graphics.draw(new Line2D.Double(line[0], line[1], line[2], line[3]));
				}
			}
		}
		graphics.dispose();
		return image;
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
