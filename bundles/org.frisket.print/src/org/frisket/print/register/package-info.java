/** From designed to measured places: how a sheet lies, and what that makes of its cuts. */
package org.frisket.print.register;
