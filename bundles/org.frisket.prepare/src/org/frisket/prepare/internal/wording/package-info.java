/** The steps from a wording to what is cut or drawn of it. */
package org.frisket.prepare.internal.wording;
