package org.frisket.sheets;

import java.util.List;

import org.frisket.geometry.Region;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Layer;
import org.frisket.model.Wording;
import org.frisket.prepare.PreparedElement;

/**
 * What comes off a sheet as one: what is cut round, with all that is drawn, creased and cut on it.
 *
 * @param key      names it within its job: the id of the element it is made of, with # and a number for a single piece
 * @param job      whose it is
 * @param layer    on which it lies
 * @param elements what it is made of, in the frame of the job; of a single piece no more than belongs to it
 * @param room     what it takes up on a sheet, in the frame of the job
 */
public record SheetPart(String key, Job job, Layer layer, List<PreparedElement> elements, Region room) {

	private static final char PIECE = '#';

	public SheetPart {
		elements = List.copyOf(elements);
	}

	/** @param piece its number from 1 if it is a single piece, else 0 */
	static String key(String element, int piece) {
		return piece == 0 ? element : element + PIECE + piece;
	}

	/** The id of the element that a part of this key is made of. */
	public static String elementOf(String key) {
		int mark = key.indexOf(PIECE);
		return mark < 0 ? key : key.substring(0, mark);
	}

	/** Whether a part of this key is a single piece of its element. */
	public static boolean isPiece(String key) {
		return key.indexOf(PIECE) >= 0;
	}

	/** The id of the element it is made of. */
	public String element() {
		return elementOf(key);
	}

	/** What people call it: the name of its element or what it says, a piece with its number. */
	public String title() {
		Element named = elements.stream().map(PreparedElement::element).filter(each -> element().equals(each.getId()))
				.findFirst().orElseGet(() -> elements.get(0).element());
		String name = named.getName();
		if ((name == null || name.isBlank()) && named instanceof Wording wording && wording.getText() != null) {
			name = wording.getText().replace('\n', ' ');
		}
		return (name == null || name.isBlank() ? named.getId() : name)
				+ (isPiece(key) ? " " + key.substring(key.indexOf(PIECE)) : "");
	}
}
