/**
 * Values as JSON documents. Every document states its kind and {@code schemaVersion}, has a JSON
 * Schema, is read strictly, with all its problems told at once by line, column and path, and is
 * written so that reading gives back an equal value.
 */
@NullMarked
package dev.kilnledger.core.document;

import org.jspecify.annotations.NullMarked;
