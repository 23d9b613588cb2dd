package org.frisket.export.pdf;

import java.util.List;
import java.util.Optional;

import org.frisket.export.OperationInk;
import org.frisket.model.OperationKind;

/**
 * What stands in an optional content group of its own. For processing steps the group says which one it is, by the names of
 * ISO 19593-1:2018, tables 2 and 3. What a pen draws is no step of that standard, and a type of our own would be an error
 * in it: its group has a name and nothing else, and its colour is apart from all that is printed, as that of a step is.
 *
 * @param name     of the group, in the user's language
 * @param standard group and type of the standard; empty for what is none of it
 * @param colorant name of the separation, the same in all languages; empty for what is printed
 * @param colour   what it looks like where nobody separates, as {@code #rrggbb}
 */
public record Step(String name, Optional<Standard> standard, String colorant, String colour) {

	/** @param type of the group; empty where the standard has none */
	public record Standard(String group, Optional<String> type) {
	}

	/** What machines do, in the order in which it is painted. */
	static final List<OperationKind> WORKED = List.of(OperationKind.DRAW, OperationKind.CREASE, OperationKind.PERFORATE,
			OperationKind.KISS_CUT, OperationKind.CUT);

	public static Step of(OperationKind kind) {
		return switch (kind) {
		case CUT -> worked(Messages.Step_cut, "Cutting", kind);
		case KISS_CUT -> worked(Messages.Step_kissCut, "PartialCutting", kind);
		case CREASE -> worked(Messages.Step_crease, "Creasing", kind);
		case PERFORATE -> worked(Messages.Step_perforate, "Perforating", kind);
		case DRAW -> new Step(Messages.Step_draw, Optional.empty(), OperationInk.word(kind),
				OperationInk.of(kind).colour());
		case PRINT -> new Step(Messages.Step_artwork, Optional.empty(), "", OperationInk.of(kind).colour());
		};
	}

	private static Step worked(String name, String type, OperationKind kind) {
		return new Step(name, Optional.of(new Standard("Structural", Optional.of(type))), OperationInk.word(kind),
				OperationInk.of(kind).colour());
	}

	/** Something printed that is no art, and no step of the standard either. */
	public static Step printed(String name) {
		return new Step(name, Optional.empty(), "", "#000000");
	}

	/** What tells people which sheet this is. */
	static Step label() {
		return new Step(Messages.Step_label, Optional.of(new Standard("Legend", Optional.empty())), "label", "#404040");
	}
}
