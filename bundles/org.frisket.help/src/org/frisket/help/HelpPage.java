package org.frisket.help;

import java.util.List;

/**
 * One page of help.
 *
 * @param id     what links call it
 * @param title  its heading
 * @param blocks what stands under the heading, from top to bottom
 */
public record HelpPage(String id, String title, List<Block> blocks) {

	public HelpPage {
		blocks = List.copyOf(blocks);
	}

	/** What a block is. */
	public enum Kind {
		HEADING, PARAGRAPH, ITEM
	}

	/** A stretch of text; {@code link} is the id of the page it leads to, or empty. */
	public record Run(String text, String link) {

		public boolean isLink() {
			return !link.isEmpty();
		}
	}

	/** A heading, a paragraph or an item of a list. */
	public record Block(Kind kind, List<Run> runs) {

		public Block {
			runs = List.copyOf(runs);
		}

		/** Its words without what they lead to. */
		public String text() {
			StringBuilder text = new StringBuilder();
			runs.forEach(run -> text.append(run.text()));
			return text.toString();
		}
	}
}
