package org.frisket.ui.bench.internal.editor;

import org.eclipse.ui.contexts.IContextActivation;
import org.eclipse.ui.contexts.IContextService;
import org.frisket.ui.bench.Bench;

/** Which keys hold on the bench: its own, or those that are left while a wording is typed. */
final class BenchKeys {

	private final IContextService contexts;
	private IContextActivation active;

	BenchKeys(IContextService contexts) {
		this.contexts = contexts;
		active = contexts.activateContext(Bench.CONTEXT_ID);
	}

	/** While nodes are edited, some keys of the bench mean other things. */
	void setEditingNodes(boolean editing) {
		contexts.deactivateContext(active);
		active = contexts.activateContext(editing ? Bench.NODES_CONTEXT_ID : Bench.CONTEXT_ID);
	}

	/** While letters are nudged, some keys of the bench mean other things. */
	void setNudgingLetters(boolean nudging) {
		contexts.deactivateContext(active);
		active = contexts.activateContext(nudging ? Bench.LETTERS_CONTEXT_ID : Bench.CONTEXT_ID);
	}

	/** While a wording is typed, letters, arrows and the like are for the text alone. */
	void setTyping(boolean typing) {
		contexts.deactivateContext(active);
		active = contexts.activateContext(typing ? Bench.TYPING_CONTEXT_ID : Bench.CONTEXT_ID);
	}
}
