declare module '*.css' {}
