package org.frisket.imports.dxf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.frisket.geometry.Point;

/** What a file holds, as far as it matters: its unit, layers, blocks and entities. */
final class Drawing {

	/**
	 * @param colour an index into the colours of DXF, negative if the layer is off
	 */
	record Layer(int colour, boolean frozen) {

		boolean isHidden() {
			return frozen || colour < 0;
		}
	}

	/** @param base the place of the block that comes to lie where it is put */
	record Block(Point base, List<Entity> entities) {
	}

	/** The number for the unit of its coordinates; 0 if none is said. */
	private int unit;
	private final Map<String, Layer> layers = new HashMap<>();
	private final Map<String, Block> blocks = new HashMap<>();
	private final List<Entity> entities = new ArrayList<>();

	int unit() {
		return unit;
	}

	void setUnit(int number) {
		unit = number;
	}

	void addLayer(String name, Layer layer) {
		layers.put(key(name), layer);
	}

	/** A visible one if the file does not list it. */
	Layer layer(String name) {
		return layers.getOrDefault(key(name), new Layer(7, false));
	}

	void addBlock(String name, Block block) {
		blocks.put(key(name), block);
	}

	/** Null if there is none. */
	Block block(String name) {
		return blocks.get(key(name));
	}

	List<Entity> entities() {
		return entities;
	}

	/** Names are the same in capitals. */
	private static String key(String name) {
		return name.toUpperCase(Locale.ROOT);
	}
}
