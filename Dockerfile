# Build stage: better-sqlite3 fetches its binary or, where there is none for the platform, compiles it here.
FROM node:20-bookworm-slim AS build
RUN apt-get update \
 && apt-get install --yes --no-install-recommends python3 make g++ \
 && rm -rf /var/lib/apt/lists/*
WORKDIR /app
COPY package.json package-lock.json ./
RUN npm ci --omit=dev

FROM node:20-bookworm-slim
ENV NODE_ENV=production DATA_DIR=/data
WORKDIR /app
COPY --from=build /app/node_modules ./node_modules
COPY package.json tsconfig.json ./
COPY core ./core
COPY db ./db
COPY bot ./bot
RUN mkdir /data && chown node:node /data && chmod 700 /data
USER node
VOLUME /data
HEALTHCHECK --interval=60s --timeout=15s --start-period=60s --retries=2 \
  CMD ["node", "--import", "tsx", "bot/commands/health.ts"]
# The process is the container's first, so that a request to stop reaches it and not a shell around it.
CMD ["node", "--import", "tsx", "bot/main.ts"]
