// The address of the worker before it served more than the survey. A phone that still has it is served as by the new one,
// until its next page with signal has put the new one in its place; that keeps the copies of pages.
importScripts('/phone-worker.js');
