/** Typing a wording on the bench itself: the text with its caret, and the keys and clicks that change it. */
package org.frisket.ui.bench.internal.typing;
