/** What the commands of the bench do, in rooms as the menus have them; here is what the rooms share. */
package org.frisket.ui.bench.internal.handlers;
