package org.frisket.typography.internal.sfnt;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.face.Axis;
import org.frisket.typography.face.AxisSettings;
import org.frisket.typography.face.NamedInstance;

/**
 * What a variable font can be varied by: table {@code fvar} of ISO/IEC 14496-22, and from {@code STAT} the names of
 * stops along an axis. Both empty for other fonts; a damaged table counts as absent.
 */
public record Variations(List<Axis> axes, List<NamedInstance> instances) {

	public static final Variations NONE = new Variations(List.of(), List.of());

	private static final int AXIS_BYTES = 20;

	public Variations {
		axes = List.copyOf(axes);
		instances = List.copyOf(instances);
	}

	public static Variations read(TableDirectory tables, NameTable names) throws UnreadableFontException, IOException {
		if (tables.length("fvar") < 16) {
			return NONE;
		}
		try {
			return read(tables.table("fvar", 16), stops(tables, names), names);
		} catch (IndexOutOfBoundsException | IllegalArgumentException damaged) {
			// cut off, or with axes whose tags are none
			return NONE;
		}
	}

	private static Variations read(ByteBuffer table, TreeMap<String, List<Axis.Stop>> stops, NameTable names) {
		int at = u16(table, 4);
		int axisCount = u16(table, 8);
		int axisSize = Math.max(AXIS_BYTES, u16(table, 10));
		int instanceCount = u16(table, 12);
		int instanceSize = Math.max(4 + 4 * axisCount, u16(table, 14));
		List<Axis> axes = new ArrayList<>();
		for (int i = 0; i < axisCount; i++, at += axisSize) {
			String tag = tag(table, at);
			double least = fixed(table, at + 4);
			double normal = Math.max(least, fixed(table, at + 8));
			double most = Math.max(normal, fixed(table, at + 12));
			boolean hidden = (u16(table, at + 16) & 1) != 0;
			axes.add(new Axis(tag, names.text(u16(table, at + 18)), least, normal, most, hidden,
					stops.getOrDefault(tag, List.of())));
		}
		List<NamedInstance> instances = new ArrayList<>();
		for (int i = 0; i < instanceCount; i++, at += instanceSize) {
			TreeMap<String, Double> values = new TreeMap<>();
			for (int k = 0; k < axisCount; k++) {
				values.put(axes.get(k).tag(), fixed(table, at + 4 + 4 * k));
			}
			boolean named = instanceSize >= 6 + 4 * axisCount;
			String name = names.text(u16(table, at));
			instances.add(new NamedInstance(name.isEmpty() ? "Instance " + (i + 1) : name,
					named ? names.text(u16(table, at + 4 + 4 * axisCount)) : "", new AxisSettings(values)));
		}
		return new Variations(axes, instances);
	}

	/** By axis tag, from axis value tables of formats 1 to 3; format 4 names places of several axes at once. */
	private static TreeMap<String, List<Axis.Stop>> stops(TableDirectory tables, NameTable names)
			throws UnreadableFontException, IOException {
		TreeMap<String, List<Axis.Stop>> stops = new TreeMap<>();
		if (tables.length("STAT") < 18) {
			return stops;
		}
		ByteBuffer table = tables.table("STAT", 18);
		try {
			int axisSize = u16(table, 4);
			int axisCount = u16(table, 6);
			int axesAt = table.getInt(8);
			int count = u16(table, 12);
			int valuesAt = table.getInt(14);
			for (int i = 0; i < count; i++) {
				int at = valuesAt + u16(table, valuesAt + 2 * i);
				int format = u16(table, at);
				int axis = u16(table, at + 2);
				if (format >= 1 && format <= 3 && axis < axisCount) {
					stops.computeIfAbsent(tag(table, axesAt + axis * axisSize), t -> new ArrayList<>())
							.add(new Axis.Stop(names.text(u16(table, at + 6)), fixed(table, at + 8)));
				}
			}
		} catch (IndexOutOfBoundsException damaged) {
			// names of stops are a courtesy
			return stops;
		}
		return stops;
	}

	private static int u16(ByteBuffer table, int at) {
		return Short.toUnsignedInt(table.getShort(at));
	}

	/** 16.16 */
	private static double fixed(ByteBuffer table, int at) {
		return table.getInt(at) / 65536.0;
	}

	private static String tag(ByteBuffer table, int at) {
		byte[] bytes = new byte[4];
		table.get(at, bytes);
		return new String(bytes, StandardCharsets.ISO_8859_1);
	}
}
