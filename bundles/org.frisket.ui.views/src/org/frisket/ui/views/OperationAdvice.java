package org.frisket.ui.views;

import java.util.function.Consumer;

import org.frisket.model.OperationKind;

/**
 * Says what an operation is best worked with. The form of operations adapts to one where a bundle brings it, and says
 * nothing where none does. Only for the UI thread.
 */
public interface OperationAdvice {

	/**
	 * Has a line of advice worked out on another thread, and again whenever the studio knows more.
	 *
	 * @param stock id of the layer's stock
	 * @param tool  id of the tool that the operation names; empty if it leaves it open
	 * @param told  on the UI thread; empty where there is nothing to say
	 * @return ends it; nothing is told from then on
	 */
	Runnable ask(String stock, OperationKind kind, String tool, Consumer<String> told);
}
