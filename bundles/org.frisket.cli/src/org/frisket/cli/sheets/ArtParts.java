package org.frisket.cli.sheets;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.frisket.cli.line.Refusal;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedLayer;
import org.frisket.imports.ImportedShape;
import org.frisket.impose.Part;
import org.frisket.impose.Turning;

/** Every shape of a file as a part; lines that close are the edge of one. */
final class ArtParts {

	/** What is no part, a sentence each. */
	private final List<String> passedOver = new ArrayList<>();
	private final List<Part> parts = new ArrayList<>();
	private final Tolerance tolerance;
	private final Turning turning;

	private ArtParts(Tolerance tolerance, Turning turning) {
		this.tolerance = tolerance;
		this.turning = turning;
	}

	/** @throws Refusal if there is no part in the file */
	static ArtParts of(Path file, ImportedArt art, Tolerance tolerance, Turning turning) throws Refusal {
		ArtParts parts = new ArtParts(tolerance, turning);
		for (ImportedLayer layer : art.layers()) {
			layer.shapes().forEach(parts::add);
		}
		if (parts.parts.isEmpty()) {
			throw new Refusal(file + ": there is no closed outline in it that could be a part");
		}
		return parts;
	}

	private void add(ImportedShape shape) {
		String name = shape.name().isEmpty() ? "part " + (parts.size() + 1) : shape.name();
		if (shape instanceof ImportedShape.Area area) {
			add(name, area.outline(), area.rule(), area.quantity());
		} else if (shape instanceof ImportedShape.Lines lines) {
			List<Contour> closed = lines.outline().contours().stream().filter(Contour::isClosed).toList();
			if (closed.size() < lines.outline().contours().size()) {
				passedOver.add("“" + name + "” has lines that do not close; they are no part");
			}
			add(name, new Outline(closed), FillRule.EVEN_ODD, lines.quantity());
		} else {
			passedOver.add("the picture “" + name + "” is no part");
		}
	}

	private void add(String name, Outline outline, FillRule rule, int quantity) {
		Region region = new OutlineCleaner().clean(outline, rule, tolerance, Monitor.NONE).region();
		if (region.isEmpty()) {
			passedOver.add("“" + name + "” holds no area");
		} else {
			parts.add(new Part(name, region, quantity, turning, 0));
		}
	}

	List<Part> parts() {
		return parts;
	}

	List<String> passedOver() {
		return passedOver;
	}
}
