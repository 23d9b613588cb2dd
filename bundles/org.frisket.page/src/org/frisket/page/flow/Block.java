package org.frisket.page.flow;

import java.io.IOException;
import java.util.List;

import org.frisket.page.PagePainter;

/**
 * What stands on a page as one and is not parted.
 *
 * @param kind    how it stands to what follows
 * @param height  in mm
 * @param texts   words on it, for whoever asks what the sheet says
 * @param content that is painted
 */
public record Block(Kind kind, double height, List<String> texts, Content content) {

	/** How a block stands to what follows. */
	public enum Kind {
		/** Nothing but room, which no page begins with. */
		ROOM,
		/** On one page with what follows. */
		HEADING, OTHER
	}

	/** What is painted. */
	public interface Content {
		/** @param top y of the upper edge of the block */
		void paint(PagePainter painter, double top) throws IOException;
	}

	public Block {
		texts = List.copyOf(texts);
	}

	public Block(double height, List<String> texts, Content content) {
		this(Kind.OTHER, height, texts, content);
	}

	/** Nothing but room. @param height in mm */
	public static Block room(double height) {
		return new Block(Kind.ROOM, height, List.of(), (painter, top) -> {
			// nothing to see
		});
	}
}
