package org.frisket.material.tools;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/** Tools as described values: what a form or a flag can set, and the tool that comes of it. */
public final class ToolOptions {

	static final Option NAME = Option.text("name", Messages.ToolOptions_name, "");
	static final Option ANGLE = Option.number("angle", Messages.ToolOptions_angle, "°", 45, 15, 75);
	/** The usual 0.25 and the range up to 0.9 are common practice, no source. */
	static final Option OFFSET = Option.length("offset", Messages.ToolOptions_offset, "0.25mm", 0, 2);
	/** How long an edge lasts is common practice, no source: the studio sets what it sees. */
	static final Option DULL_AFTER = Option.number("dull-after", Messages.ToolOptions_dullAfter, "m", 300, 1, 100_000);
	static final Option WORN = Option.number("worn", Messages.ToolOptions_worn, "m", 0, 0, 1_000_000);
	static final Option LINE = Option.length("line", Messages.ToolOptions_line, "0.5mm", 0.05, 20);
	static final Option COLOUR = Option.text("colour", Messages.ToolOptions_colour, "#000000");
	static final Option CREASE = Option.length("crease", Messages.ToolOptions_crease, "1mm", 0.1, 10);
	static final Option CUT = Option.length("cut", Messages.ToolOptions_cut, "2mm", 0.1, 50);
	static final Option TIE = Option.length("tie", Messages.ToolOptions_tie, "1mm", 0.1, 50);

	private ToolOptions() {
	}

	/** What can be said of a tool of this kind. */
	public static List<Option> of(ToolKind kind) {
		return switch (kind) {
		case BLADE -> List.of(NAME, ANGLE, OFFSET, DULL_AFTER, WORN);
		case CREASING_WHEEL -> List.of(NAME, CREASE);
		case PERFORATING_BLADE -> List.of(NAME, CUT, TIE, DULL_AFTER, WORN);
		case PEN -> List.of(NAME, LINE, COLOUR);
		};
	}

	/** All that is wrong with these texts; empty if a tool can be made of them. */
	public static List<Problem> problems(ToolKind kind, Map<String, String> texts) {
		List<Problem> problems = new ArrayList<>(Checks.each(of(kind), texts));
		String colour = texts.getOrDefault(COLOUR.name(), COLOUR.initial());
		if (kind == ToolKind.PEN && !colour.matches("#[0-9a-fA-F]{6}")) {
			problems.add(Checks.problem(COLOUR, Messages.ToolOptions_noColour, colour));
		}
		return problems;
	}

	/**
	 * The tool these texts describe; defaults for what is not said, the id for a missing name.
	 *
	 * @throws IllegalArgumentException if there are {@linkplain #problems problems}; the message is the first
	 */
	public static Tool tool(ToolKind kind, String id, Map<String, String> texts) {
		Checks.refuse(problems(kind, texts));
		OptionValues values = OptionValues.of(of(kind), texts);
		String name = values.text(NAME).isBlank() ? id : values.text(NAME).strip();
		return switch (kind) {
		case BLADE -> new Blade(id, name, values.number(ANGLE), values.length(OFFSET), edge(values));
		case CREASING_WHEEL -> new CreasingWheel(id, name, values.length(CREASE));
		case PERFORATING_BLADE ->
			new PerforatingBlade(id, name, values.length(CUT), values.length(TIE), edge(values));
		case PEN -> new Pen(id, name, values.length(LINE), values.text(COLOUR));
		};
	}

	private static Edge edge(OptionValues values) {
		return new Edge(values.number(WORN), values.number(DULL_AFTER));
	}

	/** A tool of this kind as it comes, by the name of its kind. */
	public static Tool usual(ToolKind kind) {
		return tool(kind, kind.word(), Map.of());
	}

	/** What {@link #tool} makes the same tool of. */
	public static Map<String, String> texts(Tool tool) {
		Map<String, String> texts = new LinkedHashMap<>();
		texts.put(NAME.name(), tool.name());
		if (tool instanceof Blade blade) {
			texts.put(ANGLE.name(), Checks.number(blade.angle()));
			texts.put(OFFSET.name(), Checks.length(blade.offset()));
		} else if (tool instanceof PerforatingBlade blade) {
			texts.put(CUT.name(), Checks.length(blade.cut()));
			texts.put(TIE.name(), Checks.length(blade.tie()));
		} else if (tool instanceof CreasingWheel wheel) {
			texts.put(CREASE.name(), Checks.length(wheel.width()));
		} else if (tool instanceof Pen pen) {
			texts.put(LINE.name(), Checks.length(pen.lineWidth()));
			texts.put(COLOUR.name(), pen.colour());
		}
		tool.edge().ifPresent(edge -> {
			texts.put(DULL_AFTER.name(), Checks.number(edge.dullAfter()));
			texts.put(WORN.name(), Checks.number(edge.wornMetres()));
		});
		return texts;
	}
}
