/** The list of all commands with their keys. */
package org.frisket.app.internal.keys;
