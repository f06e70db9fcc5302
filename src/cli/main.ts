#!/usr/bin/env node
console.log('usage: handspike <command>');
