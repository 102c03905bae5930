# Build stage: better-sqlite3 fetches its binary or, where there is none for the platform, compiles it here. The
# sources are compiled by the install; the image itself gets what came of them, and no compiler.
# An exact version of a maintained line, by the digest of its index for all platforms (a tag can be put on another
# image): an image made anew has the same base. To move on, change both lines.
FROM node:22.23.3-bookworm-slim@sha256:43ac6c60b8f89723f746e8a92ce91abd5017e627ce1ddfe4238355d3a30b772c AS build
RUN apt-get update \
 && apt-get install --yes --no-install-recommends python3 make g++ \
 && rm -rf /var/lib/apt/lists/*
WORKDIR /app
COPY package.json package-lock.json tsconfig.json ./
COPY .ci ./.ci
COPY core ./core
COPY db ./db
COPY bot ./bot
RUN npm ci && npm prune --omit=dev --ignore-scripts && node .ci/licences.mjs > licences.txt

FROM node:22.23.3-bookworm-slim@sha256:43ac6c60b8f89723f746e8a92ce91abd5017e627ce1ddfe4238355d3a30b772c
ENV NODE_ENV=production DATA_DIR=/data
WORKDIR /app
COPY --from=build /app/node_modules ./node_modules
COPY --from=build /app/.build ./.build
COPY --from=build /app/licences.txt ./
COPY package.json ./
RUN mkdir /data && chown node:node /data && chmod 700 /data
USER node
VOLUME /data
HEALTHCHECK --interval=60s --timeout=15s --start-period=60s --retries=2 \
  CMD ["node", ".build/health.js"]
# The process is the container's first, so that a request to stop reaches it and not a shell around it.
CMD ["node", "--max-semi-space-size=1", "--optimize-for-size", "--v8-pool-size=1", "--initial-heap-size=28", ".build/main.cjs"]
