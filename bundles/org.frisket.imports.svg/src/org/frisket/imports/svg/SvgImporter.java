package org.frisket.imports.svg;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Transform;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.imports.ImportSource;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedLayer;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.Importer;
import org.frisket.imports.Remarks;
import org.frisket.imports.UnreadableArtException;
import org.frisket.imports.WholePicture;
import org.frisket.prepare.fonts.FontLibraries;

/** Reads what an SVG file shows. Scripts, animations and whatever lies outside the file have no effect. */
public final class SvgImporter implements Importer {

	static final Option PIXELS = Option.choice("pixels-per-inch", Messages.SvgImporter_pixels, "96", "90", "72");
	static final Option STROKES = Option.choice("strokes", Messages.SvgImporter_strokes, "lines", "outlines");
	/** A picture is printed as it is, in the size that browsers give it. */
	static final Option AS = Option.choice("as", Messages.SvgImporter_as, "outlines", "picture");

	/** Of a file that says neither its size nor its view box: that of CSS for replaced elements. */
	private static final double USUAL_WIDTH = 300;
	private static final double USUAL_HEIGHT = 150;
	private static final double USUAL_FONT_SIZE = 16;

	@Override
	public List<Option> options() {
		return List.of(PIXELS, STROKES, AS);
	}

	@Override
	public ImportedArt read(ImportSource source, OptionValues options, Monitor monitor)
			throws IOException, UnreadableArtException {
		if (options.text(AS).equals("picture")) {
			return WholePicture.of(source, 1, monitor).art();
		}
		Node root = new TreeReader(source, monitor).read();
		Remarks remarks = new Remarks();
		double perInch = Integer.parseInt(options.text(PIXELS));
		ViewBox box = ViewBox.of(root);
		Lengths around = new Lengths(perInch, box == null ? USUAL_WIDTH : box.width(),
				box == null ? USUAL_HEIGHT : box.height(), USUAL_FONT_SIZE);
		double width = size(root.attribute("width", "100%"), around, Lengths.Of.WIDTH);
		double height = size(root.attribute("height", "100%"), around, Lengths.Of.HEIGHT);
		Transform fit = box == null ? Transform.IDENTITY
				: box.into(width, height, root.attribute("preserveAspectRatio", "xMidYMid meet"));
		double mm = 25.4 / perInch;
		Lengths inside = new Lengths(perInch, box == null ? width : box.width(), box == null ? height : box.height(),
				USUAL_FONT_SIZE);
		Walk walk = new Walk(source.name(), root, options.text(STROKES).equals("outlines"), FontLibraries.installed(),
				remarks, monitor);
		Map<String, List<ImportedShape>> found = walk.layers(root,
				new Scope(fit.then(Transform.scaling(mm, mm)), Style.INITIAL, inside));
		List<ImportedLayer> layers = new ArrayList<>();
		found.forEach((name, shapes) -> layers.add(new ImportedLayer(name, colour(shapes), shapes)));
		return new ImportedArt(layers, new Bounds(0, 0, width * mm, height * mm), remarks.list());
	}

	/** The whole view box, at one pixel a unit, unless the file says otherwise. */
	private static double size(String text, Lengths around, Lengths.Of of) {
		double size = around.parse(text, of);
		return size > 0 ? size : around.parse("100%", of);
	}

	/** That of the first shape that has one. */
	private static String colour(List<ImportedShape> shapes) {
		return shapes.stream().map(SvgImporter::colour).filter(colour -> !colour.isEmpty()).findFirst().orElse("");
	}

	private static String colour(ImportedShape shape) {
		if (shape instanceof ImportedShape.Area area) {
			return area.colour();
		}
		return shape instanceof ImportedShape.Lines lines ? lines.colour() : "";
	}
}
