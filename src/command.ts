#!/usr/bin/env node
import { start } from "./node/command/start.ts";

void start();
