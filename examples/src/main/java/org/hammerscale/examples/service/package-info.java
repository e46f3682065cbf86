/** The library behind a port: questions as JSON in, answers as JSON out. */
@NullMarked
package org.hammerscale.examples.service;

import org.jspecify.annotations.NullMarked;
