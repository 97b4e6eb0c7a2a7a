/** What the search of an edition finds: made of what the edition shows, and of nothing else. */
import type { Site } from "../../editions/shown.ts";
import { searchedEvidence } from "./searched-evidence.ts";
import { searchedStory } from "./searched-story.ts";
import type { Searched } from "./thing.ts";

export const searchedOf = (site: Site): Searched[] => [...searchedStory(site), ...searchedEvidence(site)];
