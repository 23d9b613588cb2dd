/** What holds for any text, whatever it is set in. */
package org.frisket.typography.internal.text;
